const BEFORE_UNIT =
  /(\d) (?=(?:%|°[CF]|µm|mils?|[mck]?m[²³]?|in[²³]?|ft[²³]?|g|kg|mL|L|fl oz|min|h|s|days?|weeks?|months?)(?![\p{L}\d]))/gu;

/** A text of a table, in which no line ends between a number and its unit. */
export const glued = (text: string): string => text.replace(BEFORE_UNIT, '$1\u00a0');
