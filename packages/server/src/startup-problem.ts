/** Why the server cannot start, in one message: what, where, and a way out. */
export class StartupProblem extends Error {}

/** The message for a failure to listen; anything unforeseen is not ours to reword. */
export function listenProblem(error: unknown, host: string, port: number): unknown {
  const code = (error as { code?: string }).code;
  if (code === "EADDRINUSE") {
    return new StartupProblem(
      `Port ${port} on ${host} is in use by another program (perhaps Ferrule is running already). ` +
        `Stop that program, or choose another port: FERRULE_PORT=${port + 1}`,
    );
  }
  if (code === "EACCES") {
    return new StartupProblem(
      `Port ${port} on ${host} may not be used by this account. Choose a port above 1023: FERRULE_PORT=4310`,
    );
  }
  if (code === "EADDRNOTAVAIL" || code === "ENOTFOUND") {
    return new StartupProblem(
      `${host} is not an address of this machine. Leave FERRULE_HOST out, or set it to 127.0.0.1`,
    );
  }
  return error;
}

/** The same for the port on the local network. */
export function networkProblem(error: unknown, port: number): unknown {
  if ((error as { code?: string }).code !== "EADDRINUSE") return error;
  return new StartupProblem(
    `Port ${port}, on which other devices would be served, is in use by another program. ` +
      `Stop that program, or choose another port: FERRULE_NETWORK_PORT=${port + 1}`,
  );
}
