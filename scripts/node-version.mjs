const [major, minor] = process.versions.node.split(".").map(Number);

/** Ends the process with a plain sentence when this Node is too old for the tools. */
export function requireNode() {
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Ferrule needs Node 20.19 or later; this is Node ${process.versions.node}.`);
  process.exit(1);
}
