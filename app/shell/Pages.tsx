interface Props {
  /** What is turned over. */
  readonly label: string;
  readonly page: number;
  readonly pages: number;
  readonly onPage: (page: number) => void;
}

/** Turning over what is too much to be drawn at once; nothing where it is not. */
export function Pages({ label, page, pages, onPage }: Props) {
  if (pages < 2) return null;
  return (
    <nav className="pages" aria-label={label}>
      <button type="button" disabled={page === 0} onClick={() => onPage(page - 1)}>
        Before
      </button>
      <span>
        Page {page + 1} of {pages}
      </span>
      <button type="button" disabled={page === pages - 1} onClick={() => onPage(page + 1)}>
        Next
      </button>
    </nav>
  );
}
