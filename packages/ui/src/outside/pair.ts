/** The form that pairs a device: for a code, the server sets a cookie that only it can read. */
function pairPage(): void {
  const form = document.querySelector("form") as HTMLFormElement;
  const field = (name: string) => form.elements.namedItem(name) as HTMLInputElement;
  // The code of a QR stands behind the #, where no server and no log gets it.
  field("code").value = decodeURIComponent(location.hash.slice(1));
  history.replaceState(null, "", location.pathname);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void pair(field("code").value, field("name").value.trim() || "Device");
  });
  field(field("code").value === "" ? "code" : "name").focus();
}

async function pair(code: string, name: string): Promise<void> {
  const said = document.querySelector("#said") as HTMLElement;
  said.textContent = "";
  const reply = await fetch("/api/pair", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ code, name }),
  }).catch(() => undefined);
  if (reply?.ok) return location.replace("/");
  const answer = (await reply?.json().catch(() => undefined)) as { error?: { message?: string } } | undefined;
  said.textContent = `${answer?.error?.message ?? "The bench cannot be reached"}.`;
}

pairPage();
