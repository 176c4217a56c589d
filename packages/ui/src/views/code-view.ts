import type { FoundCode } from "@ferrule/core";
import { html, LitElement, type PropertyValues } from "lit";
import "../components/code-camera.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { labelApi } from "../label-api.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

/** The way from a label to its part: typed, scanned as if typed, or seen by the camera. */
export class CodeView extends LitElement {
  static override properties = {
    code: {},
    found: { state: true },
    trouble: { state: true },
    busy: { state: true },
  };
  static override styles = [baseStyles, formStyles];
  /** The code in the address, as a scanned label has it. */
  declare code: string | undefined;
  declare private found: FoundCode | undefined;
  declare private trouble: string | undefined;
  declare private busy: boolean;

  constructor() {
    super();
    this.busy = false;
  }

  protected override firstUpdated(_changed: PropertyValues): void {
    if (this.code) void this.#find(this.code);
  }

  override render() {
    return html`<div class="stack">
      <h1 tabindex="-1">Find by code</h1>
      <form class="ticket stack" @submit=${this.#submitted}>
        <div>
          <label for="code">The code on the label</label>
          <p class="why" id="code-why">Five characters. Small letters and spaces will do; a scanner that types goes in here too.</p>
          <input id="code" class="mono" autocomplete="off" autocapitalize="characters" spellcheck="false" aria-describedby="code-why" .value=${this.code ?? ""} />
        </div>
        <div class="row"><button class="main" type="submit" ?disabled=${this.busy}>Go to the part</button></div>
        <div aria-live="polite">${this.trouble ? html`<p class="refusal">✕ ${this.trouble}</p>` : ""}${this.renderNotFound()}</div>
      </form>
      <ferrule-code-camera @ferrule-scanned=${(event: CustomEvent<{ text: string }>) => this.#find(event.detail.text)}></ferrule-code-camera>
    </div>`;
  }

  private renderNotFound() {
    if (!this.found || this.found.part !== null) return "";
    const { code, near } = this.found;
    if (near.length === 0)
      return html`<p class="refusal">✕ Nothing on the bench has the code ${code}. Its part may have been deleted, or belong to another bench.</p>`;
    return html`<p class="refusal">✕ Nothing on the bench has the code ${code}.</p>
      <p>Did you mean</p>
      <ul class="plain row">${near.map((one) => html`<li><a class="button" href=${hrefs.part(one.part)}><span class="mono">${one.code}</span>&nbsp;${one.part}</a></li>`)}</ul>`;
  }

  readonly #submitted = (event: Event) => {
    event.preventDefault();
    const text = this.renderRoot.querySelector<HTMLInputElement>("#code")?.value ?? "";
    if (text.trim() !== "") void this.#find(text);
  };

  /** An address with a code leads on at once, so going back must not come to it again. */
  #go(path: string): void {
    if (this.code) history.replaceState(null, "", path);
    tell(this, "ferrule-go", { path });
  }

  async #find(text: string): Promise<void> {
    this.busy = true;
    this.trouble = undefined;
    try {
      this.found = await labelApi.find(text);
      if (this.found.part !== null) this.#go(hrefs.part(this.found.part));
    } catch (error) {
      this.found = undefined;
      this.trouble = `${failed(error).message}.`;
    }
    this.busy = false;
  }
}

customElements.define("ferrule-code-view", CodeView);
