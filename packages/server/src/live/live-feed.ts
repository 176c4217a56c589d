import { done, type Outcome, problem } from "../errors.ts";
import type { Tables } from "../store/tables.ts";
import { eventText } from "./event-text.ts";
import { liveChange } from "./live-change.ts";

/** An open page, or anything else that wants to hear of changes. */
export interface Listener {
  /** The device, or the machine, that listens: each may have so many and no more. */
  readonly of: string;
  /** The number of the last change that it has heard of; nothing where it comes anew. */
  readonly after: number | undefined;
  /** Whether it may still hear. */
  isWelcome(): boolean;
  /** Takes some text of the stream; false where it does not keep up. */
  take(text: string): boolean;
  end(): void;
}

/** Tells of every change, once it is on disk, whoever made it. */
export interface LiveFeed {
  /** Begins to tell; returns what is called when nobody listens any more. */
  listen(listener: Listener): Outcome<() => void>;
  /** Tells nobody any more. */
  close(): void;
}

const listenersMost = 64;
const listenersMostOfOne = 16;
/** What was missed is told one by one up to here; more, and everything is read again at less cost. */
const missedMost = 500;
/** So that nothing on the way thinks that nobody is there. */
const beatMs = 15_000;
/** Another program that writes, such as the command line, tells nobody. */
const lookMs = 2000;
const retryMs = 3000;

interface Hearing {
  readonly listener: Listener;
  last: number;
}

export function openLiveFeed({ history, recorder }: Pick<Tables, "history" | "recorder">): LiveFeed {
  const hearing = new Set<Hearing>();
  let timers: NodeJS.Timeout[] = [];
  let isTold = false;
  const leave = (one: Hearing) => {
    if (!hearing.delete(one) || hearing.size > 0) return;
    for (const timer of timers) clearInterval(timer);
    timers = [];
  };
  const say = (one: Hearing, text: string) => {
    if (one.listener.isWelcome() && one.listener.take(text)) return;
    leave(one);
    one.listener.end();
  };
  const tell = () => {
    isTold = false;
    for (const one of hearing) {
      const text = newsAfter(one, history);
      if (text !== "") say(one, text);
    }
  };
  // After the reply to whoever made the change, and once for many.
  recorder.onChange(() => {
    if (isTold || hearing.size === 0) return;
    isTold = true;
    setImmediate(tell);
  });
  const start = () => {
    if (timers.length > 0) return;
    const beat = () => {
      for (const one of hearing) say(one, ":\n\n");
    };
    timers = [setInterval(tell, lookMs), setInterval(beat, beatMs)];
    for (const timer of timers) timer.unref();
  };
  return {
    listen: (listener) => {
      const same = [...hearing].filter((one) => one.listener.of === listener.of);
      if (hearing.size >= listenersMost || same.length >= listenersMostOfOne)
        return problem("too-many", "Too many pages listen for changes already; close some of them");
      const latest = history.latest();
      const one: Hearing = { listener, last: listener.after ?? latest };
      hearing.add(one);
      start();
      const ready = listener.after === undefined ? eventText("ready", latest, { number: latest }) : "";
      say(one, `retry: ${retryMs}\n\n${ready}${newsAfter(one, history)}`);
      return done(() => leave(one));
    },
    close: () => {
      for (const one of hearing) {
        leave(one);
        one.listener.end();
      }
    },
  };
}

/** What a listener has not heard of, as text of the stream; it counts as heard. */
function newsAfter(one: Hearing, history: Tables["history"]): string {
  const latest = history.latest();
  if (latest === one.last) return "";
  const from = one.last;
  one.last = latest;
  const missed = latest > from ? history.after(from, missedMost + 1) : [];
  // Numbers follow on one another: a gap has been forgotten, and a number that is too high is of another database.
  if (missed.length === 0 || missed.length > missedMost || missed[0]?.number !== from + 1)
    return eventText("reload", latest, { number: latest });
  return missed.map((change) => eventText("change", change.number, liveChange(history, change))).join("");
}
