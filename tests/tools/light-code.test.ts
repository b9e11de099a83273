import { describe, expect, it } from "vitest";
import { lightCode } from "../../src/build/light-code.ts";

const HELPER = 'import{t as b}from"./preload-helper.Dyg_Ba-j.js";';
const light = (code: string): string => lightCode(`import{a}from"./a.js";${HELPER}${code}`);

describe("imports of a built script", () => {
  it("stand plain, and the helper around them is gone", () => {
    expect(light("var d={one:()=>b(()=>import(`./one.x.js`).then(e=>e.n),[])};")).toBe('import{a}from"./a.js";var d={one:()=>import(`./one.x.js`).then(e=>e.n)};');
    expect(light("l(()=>b(()=>import(\"./two.js\").then(e=>e.n).then(e=>({default:e.Two})),[]));")).toBe('import{a}from"./a.js";l(()=>import("./two.js").then(e=>e.n).then(e=>({default:e.Two})));');
    expect(light("x=async()=>(await b(async()=>{let{Map:e}=await import(`./m.js`).then(e=>e.n);return{Map:e}},[])).Map;")).toBe('import{a}from"./a.js";x=async()=>(await import(`./m.js`).then(e=>e.n)).Map;');
    const address = ["`$", "{e}pagefind/pagefind.js`"].join("");
    expect(light(`n=await b(()=>import(${address}),[]);`)).toBe(`import{a}from"./a.js";n=await import(${address});`);
  });
  it("keep the helper where it still has files to fetch, and whatever only looks like it", () => {
    const listed = "b(()=>import(`./one.js`),[`./one.css`]);";
    expect(light(listed)).toBe(`import{a}from"./a.js";${HELPER}${listed}`);
    expect(light("const f=b=>b(1);ab(()=>import(`./x.js`),[]);o.b(()=>import(`./y.js`),[]);")).toBe('import{a}from"./a.js";const f=b=>b(1);ab(()=>import(`./x.js`),[]);o.b(()=>import(`./y.js`),[]);');
    expect(lightCode("b(()=>import(`./x.js`),[])")).toBe("b(()=>import(`./x.js`),[])");
  });
});
