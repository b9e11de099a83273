/** Plain JavaScript, so that an old Node can read it and say what is missing. */
const LEAST = [22, 12];
const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
if (major < LEAST[0] || (major === LEAST[0] && minor < LEAST[1])) {
  console.error(`This project needs Node ${LEAST.join(".")} or newer, and this is ${process.versions.node}.
npm brings Node 24 along on Linux and Windows: run "npm ci" without --omit=optional, then start through npm ("npm start", "npm test").
Elsewhere install Node 24 from nodejs.org and try again.`);
  process.exit(1);
}
