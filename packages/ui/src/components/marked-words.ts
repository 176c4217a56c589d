import type { Span } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import { type WordPiece, wordPieces } from "../listing/word-pieces.ts";
import { listingFactText } from "../words/listing-fact-text.ts";

export const markedWordsStyles = css`
  .words {
    white-space: pre-wrap;
    overflow-wrap: anywhere;
    max-width: 75ch;
    line-height: 1.9;
    background: var(--ticket-2);
    border-left: 3px dashed var(--line-strong);
    border-radius: 0 4px 4px 0;
    padding: 0.6rem 0.75rem;
    margin: 0;
  }
  mark {
    background: none;
    color: inherit;
    border-bottom: 2px solid var(--unsettled);
    scroll-margin: 6rem;
  }
  mark a {
    text-decoration: none;
  }
  mark sup {
    font-family: var(--mono);
    font-size: 0.7rem;
    font-weight: 700;
    line-height: 1;
    color: var(--unsettled);
    margin-left: 0.1em;
  }
  mark a:hover,
  mark:focus-within,
  mark.seen {
    background: var(--unsettled);
    color: var(--ticket);
  }
  mark a:hover sup,
  mark:focus-within sup,
  mark.seen sup {
    color: inherit;
  }
`;

/** The words with what was read from them underlined and numbered; each mark leads to its fact. */
export function markedWords(text: string, spans: readonly Span[], seen?: string): TemplateResult {
  return html`<p class="words">${wordPieces(text, spans).map((piece) => wordPiece(piece, seen))}</p>`;
}

function wordPiece(piece: WordPiece, seen: string | undefined): TemplateResult | string {
  const [first] = piece.facts;
  if (!first) return piece.text;
  const title = piece.facts.map(({ field }) => listingFactText(field)).join("; ");
  const isSeen = piece.facts.some(({ field }) => field === seen);
  const see = (event: Event) => {
    event.preventDefault();
    tell(event.currentTarget as HTMLElement, "ferrule-see-fact", { field: first.field });
  };
  // biome-ignore format: a line break inside would show among the words
  return html`<mark class=${isSeen ? "seen" : ""} title=${title} data-fields=${piece.facts.map(({ field }) => field).join(" ")}><a href="#facts" @click=${see}>${piece.text}<sup>${piece.facts.map(({ number }) => number).join(",")}</sup></a></mark>`;
}
