/** Paths with `/`, and questions about what lies on the way to them and below them. */
export class PlaceSet {
  private readonly paths: ReadonlySet<string>;
  private readonly folders: ReadonlySet<string>;

  constructor(paths: readonly string[]) {
    this.paths = new Set(paths);
    this.folders = new Set(paths.flatMap((place) => waysTo(place).slice(0, -1)));
  }

  /** Whether a place, or a folder or archive on the way to it, is one of these. */
  holds(place: string): boolean {
    return waysTo(place).some((way) => this.paths.has(way));
  }

  /** Whether a place is one of these, lies in one or has one in it. */
  touches(place: string): boolean {
    return this.folders.has(place) || this.holds(place);
  }
}

/** "a", "a/b", "a/b/c". */
function waysTo(place: string): string[] {
  const parts = place.split('/');
  return parts.map((_, at) => parts.slice(0, at + 1).join('/'));
}
