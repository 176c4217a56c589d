import type { Joint, Part } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import type { BenchContext } from "../bench-context.ts";
import { tell } from "../events.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { partTitle } from "../words/part-title.ts";
import { jointText } from "./fact-list.ts";

/** How two kinds are joined, by the kind this part is and the kind of the other. */
const jointTypes: Readonly<Record<string, Joint["type"]>> = {
  "head adapter": "screwed",
  "head shaft": "bonded",
  "adapter shaft": "bonded",
  "shaft grip": "gripped",
};

/** What a part is joined to on the bench: joints made already can be named here, and taken back. */
export class JointEditor extends LitElement {
  static override properties = { member: {}, context: {} };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      form {
        display: grid;
        grid-template-columns: minmax(0, 24rem) auto;
        gap: 0.5rem;
        align-items: end;
        justify-content: start;
      }
    `,
  ];
  declare member: Part;
  declare context: BenchContext;

  override render() {
    const joints = this.context.joints.filter((joint) => joint.parts.includes(this.member.id));
    const others = [...this.context.parts.values()].filter((other) => this.typeWith(other) !== undefined);
    return html`
      <p><strong>Joined:</strong> ${joints.length === 0 ? "to nothing." : ""}</p>
      <ul class="plain">${joints.map((joint) => html`<li class="row">${jointText(joint)} ${this.renderUndo(joint)}</li>`)}</ul>
      ${others.length > 0 ? this.renderForm(others) : ""}
    `;
  }

  private renderUndo({ id, parts }: Joint) {
    if (id === undefined) return "";
    const name = `Not any more: ${parts.join(" and ")}`;
    return html`<button aria-label=${name} @click=${() => tell(this, "ferrule-unjoin", { id })}>Not any more</button>`;
  }

  private renderForm(others: readonly Part[]) {
    return html`<details>
      <summary>It is joined to something else</summary>
      <form @submit=${this.#join}>
        <div>
          <label for="other">Joined to</label>
          <select id="other">${others.map((other) => html`<option value=${other.id}>${other.id}, ${partTitle(other)}</option>`)}</select>
        </div>
        <button type="submit">Join</button>
      </form>
    </details>`;
  }

  private typeWith(other: Part): Joint["type"] | undefined {
    return jointTypes[`${this.member.kind} ${other.kind}`] ?? jointTypes[`${other.kind} ${this.member.kind}`];
  }

  readonly #join = (event: Event) => {
    event.preventDefault();
    const id = this.renderRoot.querySelector<HTMLSelectElement>("#other")?.value ?? "";
    const other = this.context.parts.get(id);
    const type = other && this.typeWith(other);
    if (type) tell(this, "ferrule-join", { type, parts: [this.member.id, id] });
  };
}

customElements.define("ferrule-joint-editor", JointEditor);
