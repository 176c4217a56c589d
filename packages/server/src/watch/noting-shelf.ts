import type { Sighting } from "@ferrule/core";
import type { ListShelf } from "../bench/list-shelves.ts";
import type { Outcome } from "../errors.ts";

/** The log, told of every sighting that comes into it or changes. */
export function notingShelf(
  shelf: ListShelf<Sighting>,
  note: (sighting: Sighting) => void,
): ListShelf<Sighting> {
  const noted = (outcome: Outcome<Sighting>) => {
    if (outcome.ok) note(outcome.value);
    return outcome;
  };
  return {
    ...shelf,
    add: (value) => noted(shelf.add(value)),
    put: (id, value) => noted(shelf.put(id, value)),
    change: (id, next) => noted(shelf.change(id, next)),
  };
}
