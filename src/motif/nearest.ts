/** Letters to add, drop, change or swap with their neighbour to make one word the other. */
function changes(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const differs = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, rows[i - 1]![j - 1]! + differs);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** The known word that a mistyped one most likely meant, or nothing when none is near. Blind to capitals. */
export function nearestName(given: string, known: readonly string[]): string | undefined {
  const word = given.toLowerCase().slice(0, 60);
  let best: string | undefined;
  let least = Math.max(2, Math.floor(word.length / 2)) + 1;
  for (const name of known) {
    const count = changes(word, name.toLowerCase());
    if (count < least) {
      least = count;
      best = name;
    }
  }
  return best;
}
