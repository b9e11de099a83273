/** Cells of a table in the form of RFC 4180 where every cell stands in quotes; throws where it is anything else. */
export const readCsv = (text: string, separator: string): readonly (readonly string[])[] => {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 1;
  if (text.charAt(0) !== "\ufeff") throw new Error("no byte order mark");
  while (at < text.length) {
    if (text.charAt(at) !== '"') throw new Error(`no quote at ${at}`);
    let cell = "";
    for (at += 1; text.charAt(at) !== '"' || text.charAt(at + 1) === '"'; at += 1) {
      if (at >= text.length) throw new Error("a cell without an end");
      if (text.charAt(at) === '"') at += 1;
      cell += text.charAt(at);
    }
    row.push(cell);
    at += 1;
    if (text.startsWith("\r\n", at)) {
      rows.push(row);
      row = [];
      at += 2;
    } else if (text.charAt(at) === separator) at += 1;
    else throw new Error(`neither ${separator} nor the end of a line at ${at}`);
  }
  return rows;
};
