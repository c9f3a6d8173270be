/** The line that brings a builder back to a brief, as it was started. */
export function comeBackLine(id: string, isFromNpm: boolean): string {
  const command = `mastwright resume ${id}`;
  return isFromNpm ? `${command} (here: npm start -- resume ${id})` : command;
}
