import type { Adapter, Head, NearMiss, Shaft } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { api } from "../api.ts";
import { type BenchContext, contextOf } from "../bench-context.ts";
import { factList, factListStyles, jointText } from "../components/fact-list.ts";
import { sentence } from "../components/sentence.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import "../components/verdict-mark.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { asReamed, jointClashes } from "../drawings/joint-clashes.ts";
import "../drawings/joint-drawing.ts";
import { jointFacts } from "../drawings/joint-facts.ts";
import { Fetched } from "../fetched.ts";
import { benchTables } from "../live/bench-tables.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { titleById } from "../words/part-title.ts";

/** Two parts that do not make a club, with the smallest set of facts that proves it. */
export class RefusalView extends LitElement {
  static override properties = { display: {}, pair: {} };
  static override styles = [
    baseStyles,
    factListStyles,
    css`
      .link {
        font-family: var(--mono);
        color: var(--ink-soft);
        margin: 0;
      }
      .proof {
        border-left: 6px solid var(--refused);
      }
      .proof li {
        padding: 0.4rem 0;
      }
    `,
  ];
  declare display: DisplaySettings;
  declare pair: { head: string; shaft: string; adapter: string | null };
  readonly #all = new Fetched(
    this,
    () => Promise.all([api.bench(), api.goesWith(this.pair.head)]),
    benchTables,
  );

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <h1 tabindex="-1">Why this does not fit</h1>
      ${whenReady(this.#all.state, "the proof", ([bench, { nearMisses }]) => {
        const { head, shaft, adapter } = this.pair;
        const miss = nearMisses.find(
          (one) => one.head === head && one.shaft === shaft && one.adapter === adapter,
        );
        return miss ? this.renderProof(miss, contextOf(bench, this.display.lengthUnit)) : this.renderGone();
      })}
    </div>`;
  }

  private renderProof(miss: NearMiss, context: BenchContext) {
    const { findings, facts, joints, text } = miss.proof;
    const hints = findings.flatMap(({ hint }) => hint ?? []);
    return html`
      <section class="ticket proof stack" aria-label="Proof">
        <p>${this.renderPair(miss, context)}</p>
        <p class="link">because</p>
        <ul class="plain">${findings.map(({ text: clause, rule }, at) => html`<li>${at > 0 ? html`<span class="link">and </span>` : ""}${clause}<br /><span class="mono soft">rule ${rule}</span></li>`)}</ul>
        <p class="link">therefore</p>
        <p><ferrule-verdict .verdict=${miss.verdict}></ferrule-verdict></p>
        ${hints.length > 0 ? html`<p class="link">what would help</p><ul class="plain">${hints.map((hint) => html`<li>${sentence(hint)}</li>`)}</ul>` : ""}
      </section>
      ${this.renderJoint(miss, context)}
      <section class="ticket" aria-labelledby="facts">
        <h2 id="facts">The facts it rests on</h2>
        <p class="small soft">The smallest set: take any one away and the proof no longer holds. If one is wrong, change it at the part.</p>
        ${factList(facts, context)}
        ${joints.length > 0 ? html`<p class="small">Joined on the bench: ${joints.map(jointText).join(", ")}.</p>` : ""}
      </section>
      <details class="ticket"><summary>The whole proof in words</summary><p>${text}</p></details>
    `;
  }

  /** Drawn only where what refuses is to be seen there. */
  private renderJoint({ head, adapter, shaft, proof }: NearMiss, { parts, lengthUnit }: BenchContext) {
    const clashes = jointClashes(proof.findings);
    const [headPart, shaftPart] = [parts.get(head), parts.get(shaft)];
    if (clashes.length === 0 || !headPart || !shaftPart) return "";
    const members = {
      head: headPart as Head,
      adapter: adapter === null ? undefined : (parts.get(adapter) as Adapter),
      shaft: shaftPart as Shaft,
    };
    return html`<section class="ticket" aria-labelledby="joint"><h2 id="joint">Where it clashes</h2>
      <ferrule-joint-drawing .facts=${asReamed(jointFacts(members), proof.findings)} .clashes=${clashes} .unit=${lengthUnit}></ferrule-joint-drawing></section>`;
  }

  private renderPair(miss: NearMiss, { parts }: BenchContext) {
    const link = (id: string) =>
      html`<a href=${hrefs.part(id)}>${titleById(parts, id)}</a> <span class="mono">${id}</span>`;
    return html`<strong>${link(miss.head)}</strong> with <strong>${link(miss.shaft)}</strong>${miss.adapter ? html` through <strong>${link(miss.adapter)}</strong>` : ""}`;
  }

  private renderGone() {
    return emptyNote(
      "This refusal no longer stands",
      "A fact, a claim or the skill allowed has changed since.",
      html`<a class="button" href=${hrefs.part(this.pair.head)}>See what ${this.pair.head} goes with</a>`,
    );
  }
}

customElements.define("ferrule-refusal-view", RefusalView);
