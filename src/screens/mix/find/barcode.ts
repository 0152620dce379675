const JAR_LINK = /#\/mix\/jar\/([0-9a-f-]{36})/i;

/** The id of the jar that a label's link names; undefined for a foreign code. */
export const jarIdOf = (text: string): string | undefined => JAR_LINK.exec(text)?.[1]?.toLowerCase();
