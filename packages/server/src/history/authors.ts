import { AsyncLocalStorage } from "node:async_hooks";
import type { Author } from "../store/history.ts";

/** Whose request is being answered, for as long as it is. */
export interface Authors {
  /** Runs work, and all that comes of it, as somebody's. */
  as<T>(author: Author, work: () => T): T;
  current(): Author | undefined;
}

export function openAuthors(): Authors {
  const storage = new AsyncLocalStorage<Author>();
  return {
    as: (author, work) => storage.run(author, work),
    current: () => storage.getStore(),
  };
}
