import { html, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import type { FetchState } from "../fetched.ts";

/** The three states of anything fetched: a quiet wait, a plain failure with a way on, or the thing itself. */
export function whenReady<T>(
  state: FetchState<T>,
  waitingFor: string,
  show: (value: T) => TemplateResult,
): TemplateResult {
  switch (state.is) {
    case "loading":
      return html`<p class="ticket soft" role="status">Getting ${waitingFor} …</p>`;
    case "failed":
      return failedNote(state.code, state.message);
    case "ready":
      return show(state.value);
  }
}

function failedNote(code: string, message: string): TemplateResult {
  const title = code === "not-found" ? "That is not on the bench" : "That did not work";
  return html`<div class="ticket stack" role="alert">
    <h2>${title}</h2>
    <p>${message}.</p>
    <div class="row">
      <button class="main" @click=${(event: Event) => tell(event.currentTarget as HTMLElement, "ferrule-retry", undefined)}>Try again</button>
      <a class="button" href="/">Back to the bench</a>
    </div>
  </div>`;
}

/** Nothing here yet, and what to do about it. */
export function emptyNote(title: string, text: string, action?: TemplateResult): TemplateResult {
  return html`<div class="ticket stack">
    <h2>${title}</h2>
    <p class="soft">${text}</p>
    ${action ?? ""}
  </div>`;
}
