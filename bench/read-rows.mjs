// Opens a bench's database without any of Ferrule and reads every thing in it: the least that a start has to do.
import { openPlainDatabase } from "./plain-sqlite.mjs";

const database = openPlainDatabase(process.argv[2]);
for (const table of ["parts", "joints", "claims"])
  for (const { body } of database.prepare(`select body from ${table} order by place`).all()) JSON.parse(body);
