/** What the program says of itself where there is nobody to ask. */
export const explanation = `Mastwright asks about a camera post that makes its own power, works out its parts and says what they mean.
It needs somebody to answer. This is a pipe, so nothing was begun.

On a terminal:          mastwright
From a brief in a file: mastwright size BRIEF.json --json
                        mastwright checklist BRIEF.json --to md
What a brief holds:     mastwright schema
Line by line, from a pipe too: mastwright --plain
`;
