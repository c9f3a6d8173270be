/** The line that brings a builder back to a brief, as it was started. */
export function comeBackLine(
  id: string,
  started: { readonly isFromNpm: boolean; readonly isPlain: boolean },
): string {
  const command = `resume ${id}${started.isPlain ? " --plain" : ""}`;
  return started.isFromNpm
    ? `mastwright ${command} (here: npm start -- ${command})`
    : `mastwright ${command}`;
}
