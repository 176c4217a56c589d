// A server's process that has read its code and waits to be told its environment, so that starting it takes little: what is
// read stays as it is, and everything that concerns the bench happens after the word.
const { main } = await import(process.argv[2]);
process.once("message", (env) => {
  process.disconnect();
  Object.assign(process.env, env);
  void main();
});
process.send?.("ready");
