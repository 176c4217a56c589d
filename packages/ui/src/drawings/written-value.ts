type Written = number | { readonly value: number } | undefined;

/** The figure of a reading as it was written, bare or with what is known of it. */
export function writtenValue(written: Written): number | undefined {
  return typeof written === "object" ? written.value : written;
}
