import type { ScopeUniforms } from "../../figures/scope-uniforms.ts";

/** What a shader in a page is given, by name. */
export type ShaderNumbers = Readonly<Record<string, readonly number[]>>;

export interface Drawn {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly vertex: string;
  readonly fragment: string;
  readonly numbers: ShaderNumbers;
}

/** The numbers of the picture's shader for a square of this size. */
export const numbersOf = (uniforms: ScopeUniforms, sizePx: number): ShaderNumbers => ({
  F: [...uniforms.F], G: [...uniforms.G], tip: uniforms.tip, view: uniforms.view,
  halfField: [uniforms.halfField], light: [uniforms.light], ticks: [uniforms.ticks], mirror: [uniforms.mirror],
  zero: [0], size: [sizePx, sizePx], corner: [0, 0],
});

/**
 * Runs in a page, and so may name nothing of this file: keeps one program a shader, draws, and gives the pixels from the
 * bottom row up, with the time from the call until they could be read.
 */
export const drawnIn = ({ widthPx, heightPx, vertex, fragment, numbers }: Drawn): { readonly pixels: readonly number[]; readonly tookMs: number } => {
  const canvas = document.querySelector("canvas") ?? document.body.appendChild(document.createElement("canvas"));
  const gl = canvas.getContext("webgl2", { preserveDrawingBuffer: true });
  if (gl === null) throw new Error("no WebGL 2");
  const start = performance.now();
  const kept = canvas as unknown as { programs?: Map<string, WebGLProgram> };
  kept.programs ??= new Map();
  const program = kept.programs.get(fragment) ?? gl.createProgram();
  if (!kept.programs.has(fragment)) {
    const shaders = ([[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]] as const).map(([kind, text]) => {
      const shader = gl.createShader(kind) as WebGLShader;
      gl.shaderSource(shader, text);
      gl.compileShader(shader);
      gl.attachShader(program, shader);
      return shader;
    });
    gl.linkProgram(program);
    if (!gl.getProgramParameter(program, gl.LINK_STATUS)) throw new Error([gl.getProgramInfoLog(program), ...shaders.map((one) => gl.getShaderInfoLog(one))].join("\n"));
    kept.programs.set(fragment, program);
  }
  [canvas.width, canvas.height] = [widthPx, heightPx];
  gl.viewport(0, 0, widthPx, heightPx);
  gl["useProgram"](program);
  const byLength: Readonly<Record<number, (at: WebGLUniformLocation | null, list: readonly number[]) => void>> = {
    1: (at, list) => gl.uniform1fv(at, list), 2: (at, list) => gl.uniform2fv(at, list), 3: (at, list) => gl.uniform3fv(at, list), 9: (at, list) => gl.uniformMatrix3fv(at, false, list),
  };
  for (const [name, list] of Object.entries(numbers)) {
    const at = gl.getUniformLocation(program, name);
    if (name === "zero") gl.uniform1i(at, 0);
    else if (name === name.toUpperCase() || name === "points") gl.uniform4fv(at, list);
    else byLength[list.length]?.(at, list);
  }
  gl.drawArrays(gl.TRIANGLES, 0, 3);
  const pixels = new Uint8Array(4 * widthPx * heightPx);
  gl.readPixels(0, 0, widthPx, heightPx, gl.RGBA, gl.UNSIGNED_BYTE, pixels);
  return { pixels: [...pixels], tookMs: performance.now() - start };
};
