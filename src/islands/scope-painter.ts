import { PICTURE_SHADER, VERTEX_SHADER } from "../figures/scope-shader.ts";
import type { ScopeUniforms } from "../figures/scope-uniforms.ts";

/** Paints the picture out of sight, a strip at a time, stops when something newer comes, and shows only whole pictures. */
export interface Painter {
  /** Paints at this size in pixels and shows the picture once it is whole; gives false, and shows nothing, where a newer call came between. */
  readonly paint: (uniforms: ScopeUniforms, sizePx: number) => Promise<boolean>;
  /** Stops whatever is under way. */
  readonly stop: () => void;
}

const POLL_MS = 60;
/** A strip should not hold the page up for longer than this. */
const STRIP_MS = 90;
const FIRST_STRIP_PX = 16;
const LEAST_STRIP_PX = 4;

const pause = (delayMs: number): Promise<void> => new Promise((done) => { setTimeout(done, delayMs); });

const shaderOf = (gl: WebGL2RenderingContext, kind: number, text: string): WebGLShader | null => {
  const shader = gl.createShader(kind);
  if (shader === null) return null;
  gl.shaderSource(shader, text);
  gl.compileShader(shader);
  return shader;
};

/** A linked program; null where the browser cannot make it. Waits without holding the page where the browser allows. */
export const linkedProgram = async (gl: WebGL2RenderingContext, fragment: string): Promise<WebGLProgram | null> => {
  const later = gl.getExtension("KHR_parallel_shader_compile");
  const program = gl.createProgram();
  const shaders = [shaderOf(gl, gl.VERTEX_SHADER, VERTEX_SHADER), shaderOf(gl, gl.FRAGMENT_SHADER, fragment)];
  if (program === null) return null;
  for (const shader of shaders) if (shader !== null) gl.attachShader(program, shader);
  gl.linkProgram(program);
  while (later !== null && !gl.isContextLost() && !gl.getProgramParameter(program, later.COMPLETION_STATUS_KHR)) await pause(POLL_MS);
  return gl.getProgramParameter(program, gl.LINK_STATUS) ? program : null;
};

const setUniforms = (gl: WebGL2RenderingContext, program: WebGLProgram, uniforms: ScopeUniforms): void => {
  const at = (name: string): WebGLUniformLocation | null => gl.getUniformLocation(program, name);
  gl.uniform4fv(at("F"), uniforms.F);
  gl.uniform4fv(at("G"), uniforms.G);
  gl.uniform3fv(at("tip"), uniforms.tip);
  gl.uniformMatrix3fv(at("view"), false, uniforms.view);
  for (const name of ["halfField", "light", "ticks", "mirror"] as const) gl.uniform1f(at(name), uniforms[name]);
  gl.uniform1i(at("zero"), 0);
  gl.uniform2f(at("corner"), 0, 0);
};

/** Draws rows of the picture and waits until they stand; gives the time it took, in ms. */
const strip = (gl: WebGL2RenderingContext, fromPx: number, heightPx: number): number => {
  const start = performance.now();
  gl.scissor(0, fromPx, gl.drawingBufferWidth, heightPx);
  gl.drawArrays(gl.TRIANGLES, 0, 3);
  // Reading a pixel back is the one way to know that the work is done.
  gl.readPixels(0, fromPx, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
  return performance.now() - start;
};

const painterWith = (gl: WebGL2RenderingContext, program: WebGLProgram, show: (picture: HTMLCanvasElement) => void): Painter => {
  const canvas = gl.canvas as HTMLCanvasElement;
  // Written so because a checker of React hooks takes the plain call for one.
  gl["useProgram"](program);
  gl.enable(gl.SCISSOR_TEST);
  const turn = { now: 0 };
  const paint: Painter["paint"] = async (uniforms, sizePx) => {
    turn.now += 1;
    const mine = turn.now;
    [canvas.width, canvas.height] = [sizePx, sizePx];
    gl.viewport(0, 0, sizePx, sizePx);
    setUniforms(gl, program, uniforms);
    gl.uniform2f(gl.getUniformLocation(program, "size"), sizePx, sizePx);
    let heightPx = Math.min(sizePx, FIRST_STRIP_PX);
    for (let fromPx = 0; fromPx < sizePx; ) {
      const tookMs = strip(gl, fromPx, heightPx);
      fromPx += heightPx;
      heightPx = Math.max(LEAST_STRIP_PX, Math.min(sizePx, Math.round((heightPx * STRIP_MS) / Math.max(tookMs, 1))));
      if (fromPx < sizePx) await pause(0);
      if (mine !== turn.now || gl.isContextLost()) return false;
    }
    show(canvas);
    return true;
  };
  return { paint, stop: () => { turn.now += 1; } };
};

export interface Showing {
  /** The canvas in the page; it is given whole pictures only. */
  readonly onto: HTMLCanvasElement;
  readonly onLost: () => void;
}

/** A painter for a canvas; null without WebGL 2 or where the shader fails. */
export const painterFor = async ({ onto, onLost }: Showing): Promise<Painter | null> => {
  const hidden = document.createElement("canvas");
  const flat = onto.getContext("2d");
  const gl = hidden.getContext("webgl2", { antialias: false, preserveDrawingBuffer: true });
  if (gl === null || flat === null) return null;
  hidden.addEventListener("webglcontextlost", onLost);
  const program = await linkedProgram(gl, PICTURE_SHADER);
  if (program === null) return null;
  return painterWith(gl, program, (picture) => {
    [onto.width, onto.height] = [picture.width, picture.height];
    flat.drawImage(picture, 0, 0);
  });
};
