/** The value of a stored note. One that cannot be read is a note that is not there: it can be made anew. */
export function storedNote(json: string | undefined): unknown {
  if (json === undefined || json === '') return undefined;
  try {
    return JSON.parse(json);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
