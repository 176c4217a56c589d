import { openPlainDatabase } from "./plain-sqlite.mjs";

/**
 * The same question as an indexed join in SQLite in memory: shafts that carry an adapter which the head takes, of its hand,
 * made for its club type, sound, with a grip on. It holds for the seeded benches, whose facts are complete but for some
 * heads; the product's rules ask more.
 */
export function sqlJoin(graph) {
  const database = openPlainDatabase(":memory:");
  database.exec(`
    create table shaft (id text primary key, suits text, sound integer, gripped integer, tip real);
    create table adapter (id text primary key, shaft text, family text, hand text, bore real);
    create table claim (receiver text, adapter text, verdict text);
    create index adapter_family on adapter (family, hand, shaft);
  `);
  const addShaft = database.prepare("insert into shaft values (?, ?, ?, ?, ?)");
  for (const { id, suits, faults, tip } of graph.at.shaft) {
    addShaft.run(
      id,
      suits,
      faults.length === 0 ? 1 : 0,
      graph.occupancy.at(id, "butt") ? 1 : 0,
      tip.diameterIn,
    );
  }
  const addAdapter = database.prepare("insert into adapter values (?, ?, ?, ?, ?)");
  for (const { id, family, hand, bore } of graph.at.adapter) {
    addAdapter.run(id, graph.occupancy.at(id, "bore")?.other ?? null, family, hand, bore.diameterIn);
  }
  const addClaim = database.prepare("insert into claim values (?, ?, ?)");
  for (const { receiver, adapter, verdict } of decided(graph.claims))
    addClaim.run(receiver, adapter, verdict);
  const query = database.prepare(`
    select shaft.id from adapter join shaft on shaft.id = adapter.shaft
    where adapter.family in (
        select ?1 where not exists (select 1 from claim where receiver = ?1 and adapter = ?1 and verdict = 'does-not-fit')
        union select adapter from claim where receiver = ?1 and verdict <> 'does-not-fit')
      and adapter.hand = ?2
      and shaft.suits = 'wood' and shaft.sound = 1 and shaft.gripped = 1
  `);
  return { answer: (head) => query.all(head.socket.family, head.hand) };
}

/** Of the claims on each pair of families, what the best evidence says; equals that disagree decide nothing. */
function decided(claims) {
  const pairs = groupBy(claims, pairOf);
  return [...pairs.values()].map((alike) => {
    const tried = alike.filter(({ evidence }) => evidence === "tried");
    const verdicts = new Set((tried.length > 0 ? tried : alike).map(({ verdict }) => verdict));
    const { receiver, adapter } = alike[0];
    return { receiver, adapter, verdict: verdicts.size > 1 ? "disputed" : [...verdicts][0] };
  });
}

const pairOf = ({ receiver, adapter }) => `${receiver} ${adapter}`;

function groupBy(list, key) {
  const groups = new Map();
  for (const each of list) groups.set(key(each), [...(groups.get(key(each)) ?? []), each]);
  return groups;
}
