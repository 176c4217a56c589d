/** What this file needs of a service worker's surroundings; TypeScript's own description of them clashes with that of a page. */
interface Surroundings {
  addEventListener(type: "install" | "activate", listener: (event: Lasting) => void): void;
  addEventListener(type: "fetch", listener: (event: Fetching) => void): void;
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
}

interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}

interface Fetching extends Lasting {
  readonly request: Request;
  respondWith(reply: Promise<Response>): void;
}

/** Every file of the page, written in by the build; so each build is a new service worker. */
declare const shellFiles: readonly string[];
declare const shellVersion: string;

const surroundings = self as unknown as Surroundings;
const shell = `shell-${shellVersion}`;
/** A network that does not answer in this time counts as none. */
const patienceMs = 3000;
/** Pages of their own, for devices that are not paired yet. */
const outside = /^\/(api|pair|trust)(\/|$|\.)/;

surroundings.addEventListener("install", (event) =>
  event.waitUntil(fill().then(() => surroundings.skipWaiting())),
);
surroundings.addEventListener("activate", (event) =>
  event.waitUntil(forgetOthers().then(() => surroundings.clients.claim())),
);
surroundings.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin || outside.test(pathname)) return;
  if (request.mode === "navigate") event.respondWith(pageFor(request, pathname));
  else if (shellFiles.includes(pathname)) event.respondWith(fileFor(request));
});

async function fill(): Promise<void> {
  const cache = await caches.open(shell);
  const page = await fetch("/", { cache: "no-cache" });
  // A device that is not paired is sent elsewhere, and that is not the page.
  if (!page.ok || page.redirected) throw new Error("the page cannot be fetched");
  await cache.put("/", page);
  await cache.addAll(shellFiles);
}

async function forgetOthers(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name !== shell).map((name) => caches.delete(name)));
}

/** The page as the network has it, so that a new version shows at once; without the network, as it is kept. */
async function pageFor(request: Request, pathname: string): Promise<Response> {
  const kept = await caches.match("/");
  // Text that is shared stands in the address, and may be too long for the network.
  if (kept && pathname === "/share") return kept;
  try {
    return await fetch(request, kept ? { signal: AbortSignal.timeout(patienceMs) } : {});
  } catch (error) {
    if (kept) return kept;
    throw error;
  }
}

/** Files are named by what is in them, so a kept one is right. */
async function fileFor(request: Request): Promise<Response> {
  return (await caches.match(request, { ignoreVary: true })) ?? fetch(request);
}
