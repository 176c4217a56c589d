/** One event of a stream as the HTML standard has it (9.2.6, Interpreting an event stream). */
export function eventText(event: "ready" | "change" | "reload", id: number, data: object): string {
  return `id: ${id}\nevent: ${event}\ndata: ${JSON.stringify(data)}\n\n`;
}
