// Moves of one exercise that follow each other, as its two sides do, in one group each.
function grouped(moves) {
  const groups = [];
  for (const move of moves) {
    const last = groups[groups.length - 1];
    if (last && last[0].id === move.id) {
      last.push(move);
    } else {
      groups.push([move]);
    }
  }
  return groups;
}

// The name of a group, with its sides: Split squat, left side, then right side.
function titleOf(moves) {
  const sides = [...new Set(moves.map((it) => it.side).filter(Boolean))].join(", then ");
  return [moves[0].name, sides].filter(Boolean).join(", ");
}
