const setOf = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/));

const negators =
  setOf(`no not never without w/o zero nil none nothing free neither nor minus less missing lost excluding excl lacks
  lacking isn't isnt aren't arent wasn't wasnt doesn't doesnt don't dont didn't didnt hasn't hasnt haven't havent can't cant cannot
  couldn't couldnt won't wont nae devoid sans aucun aucune pas ni kein keine keinen keiner keinerlei ohne nicht sin ningun
  ninguna senza nessun nessuna geen zonder niet inga ingen inte utan uten ikke ingenting sem nao nor niente nessuna ej heller`);
const counting = setOf(
  "a an one some single small slight tiny few minor light couple two three little odd bit",
);
const between =
  setOf(`any sign signs of visible obvious nasty such other evidence trace traces hint hints have had got come
  see seen find found spot show shows showing suffer suffers from been be at all whatsoever crown head heads face paint sole
  it its the this that with include included original matching driver de der die das des del la le les el von d
  hairline structural cosmetic real noticeable surface deep bad more further actual usable loft torque adjustment even
  there visibles sichtbaren sichtbare club body hosel top line topline supplied ever really anything internal`);
const faultLike =
  setOf(`mark marks scuff scuffs chip chips scratch scratches scrape scrapes ding dings dent dents nick nicks issue
  issues problem problems defect defects damage blemish blemishes wear repairs repair bumps bump dinks dink sky skymarks cracks
  crack rattle rattles rust dellen kratzer risse rayures fissures`);
const partLike = setOf(
  "shaft shafts grip grips adapter adaptor sleeve box receipt ferrule cover headcover wrench tool key hc",
);
const joining = setOf(", / & and + et und y");
const either = setOf("or nor oder ou o");

interface Piece {
  readonly word: string;
  readonly end: number;
  readonly start: number;
}

type Step = "denied" | "not" | "on";

/** What the walk back from a fact has passed: a count ("one small"), a joint (", "), an "or". */
interface Passed {
  counted: boolean;
  joined: boolean;
  orSeen: boolean;
}

function stepOver(word: string, passed: Passed): Step {
  if (negators.has(word)) return "denied";
  if (either.has(word)) {
    passed.orSeen = true;
    passed.counted = false;
    return "on";
  }
  if (joining.has(word)) {
    // "no sky marks, one small dent": what is counted after a comma is a statement of its own.
    if (passed.counted) return "not";
    passed.joined = true;
    return "on";
  }
  if (counting.has(word)) passed.counted = true;
  else if (partLike.has(word)) return passed.joined && !passed.orSeen ? "not" : "on";
  else if (!between.has(word) && !faultLike.has(word)) return "not";
  return "on";
}

const reach = 14;

/** Answers whether the words before a fact deny it; facts have to be asked about from left to right. */
export type Denial = (start: number) => boolean;

function piecesOf(plain: string): Piece[] {
  return Array.from(plain.matchAll(/\bw\/o\b|[a-z0-9']+|\n|\S/g), ({ 0: word, index }) => ({
    word,
    start: index,
    end: index + word.length,
  }));
}

/**
 * Follows negation through a text: "no cracks, dents or rattles" denies all three, "no sky marks, one small dent" only the
 * first. `deny` tells it that a fact which ends there is denied, so that what is joined to it is denied with it.
 */
export function followDenial(plain: string): { isDenied: Denial; deny: (end: number) => void } {
  const pieces = piecesOf(plain);
  let place = 0;
  let lastDeniedEnd = -1;
  const isDenied: Denial = (start) => {
    while (place < pieces.length && (pieces[place]?.start ?? 0) < start) place += 1;
    const passed: Passed = { counted: false, joined: false, orSeen: false };
    for (let back = place - 1; back >= Math.max(0, place - reach); back -= 1) {
      const piece = pieces[back];
      if (piece === undefined) return false;
      if (piece.end === lastDeniedEnd) return true;
      const step = stepOver(piece.word, passed);
      if (step !== "on") return step === "denied";
    }
    return false;
  };
  return {
    isDenied,
    deny: (end) => {
      lastDeniedEnd = end;
    },
  };
}
