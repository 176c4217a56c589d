const oldest = [20, 19];

/** Ends the process with a message where this Node is older than Ferrule needs. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > oldest[0] || (major === oldest[0] && minor >= oldest[1])) return;
  process.stderr.write(
    `Ferrule needs Node ${oldest.join(".")} or newer, and this is ${process.versions.node}\n`,
  );
  process.exit(1);
}
