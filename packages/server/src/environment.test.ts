import { expect, it } from "vitest";
import { readEnvironment } from "./environment.ts";

it.each([
  [{}, undefined],
  [{ FERRULE_NETWORK: "0" }, undefined],
  [{ FERRULE_NETWORK: "1" }, 4311],
  [{ FERRULE_NETWORK: "1", FERRULE_NETWORK_PORT: "8443" }, 8443],
])("serves the network as %j says: on port %j", (env, port) => {
  expect(readEnvironment(env).networkPort).toBe(port);
});

it.each([
  [{}, true],
  [{ FERRULE_BACKUPS: "1" }, true],
  [{ FERRULE_BACKUPS: "0" }, false],
])("makes backups every day as %j says: %j", (env, isWanted) => {
  expect(readEnvironment(env).dailyBackups).toBe(isWanted);
});

it.each([
  [{}, undefined],
  [{ FERRULE_REQUESTS_PER_MINUTE: "60000" }, 60000],
])("lets this machine ask as %j says: %j times a minute", (env, count) => {
  expect(readEnvironment(env).requestsPerMinute).toBe(count);
});

it.each([
  [{ FERRULE_REQUESTS_PER_MINUTE: "0" }, /FERRULE_REQUESTS_PER_MINUTE is "0"\. Give a whole number from 1/],
  [{ FERRULE_REQUESTS_PER_MINUTE: "many" }, /FERRULE_REQUESTS_PER_MINUTE is "many"/],
  [{ FERRULE_BACKUPS: "never" }, /FERRULE_BACKUPS is "never"\. Give 0/],
  [{ FERRULE_NETWORK: "yes" }, /FERRULE_NETWORK is "yes"\. Give 1/],
  [{ FERRULE_NETWORK: "1", FERRULE_NETWORK_PORT: "70000" }, /FERRULE_NETWORK_PORT is "70000".*4311/],
])("says what is wrong with %j", (env, message) => {
  expect(() => readEnvironment(env)).toThrow(message);
});
