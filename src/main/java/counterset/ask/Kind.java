package counterset.ask;

/** What a name of the vocabulary stands for. */
enum Kind {
  MUSCLE,
  REGION,
  EQUIPMENT,
  LIMITATION,
  EXERCISE,
  FAMILY,
  PATTERN,
  LEVEL,
  PAIRING,
  SHAPE,
  CLOCK_PART,
  NO_EQUIPMENT,
  NOT,
  EMPHASIS,
  INCLUDE,
  LIKES,
  DISLIKES,
  DAY,
  FILLER
}
