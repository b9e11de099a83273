/**
 * The cover of a copy on computers that many people use: after some minutes without a hand on it, it lies over what the
 * last person typed. It hides and locks nothing; whoever comes next starts fresh, and whoever was only reading goes on.
 */

const IDLE_MS = 300_000;
const LOOK_EVERY_MS = 10_000;
const SIGNS = ["pointerdown", "keydown", "input", "wheel", "touchstart"] as const;

/** Shows the cover when nobody has touched the page for five minutes, and starts fresh when its first button is pressed. */
export const coverWhenIdle = (cover: HTMLDialogElement, startFresh: () => void): void => {
  let lastMs = Date.now();
  const look = (): void => {
    if (!cover.open && Date.now() - lastMs >= IDLE_MS) cover.showModal();
  };
  // A computer that slept stops its timers, so the first touch afterwards looks before it counts.
  const touched = (): void => {
    look();
    if (!cover.open) lastMs = Date.now();
  };
  for (const sign of SIGNS) document.addEventListener(sign, touched, { capture: true, passive: true });
  document.addEventListener("visibilitychange", look);
  setInterval(look, LOOK_EVERY_MS);
  const [fresh, on] = cover.querySelectorAll("button");
  fresh?.addEventListener("click", startFresh);
  on?.addEventListener("click", () => cover.close());
  cover.addEventListener("close", () => {
    lastMs = Date.now();
  });
};
