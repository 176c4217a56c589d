/** Shows what the certificate's fingerprint is, for a person to compare. */
async function trustPage(): Promise<void> {
  const reply = await fetch("/api/trust").catch(() => undefined);
  const answer = (await reply?.json().catch(() => undefined)) as { fingerprint?: string } | undefined;
  const text = answer?.fingerprint ?? "Nothing is served on the network just now, so there is no certificate";
  (document.querySelector("#fingerprint") as HTMLElement).textContent = text;
}

void trustPage();
