import { useState } from 'react';

/** Which page is open: the one with what is in hand, once it is taken in hand; from there the pages are turned by hand. */
export function usePage(inHand: number, count: number, onPage: number) {
  const [asked, setPage] = useState<number | null>(null);
  const [turnedTo, setTurnedTo] = useState(inHand);
  if (turnedTo !== inHand) {
    setTurnedTo(inHand);
    setPage(null);
  }
  const pages = Math.max(1, Math.ceil(count / onPage));
  const page = Math.max(0, Math.min(asked ?? Math.floor(inHand / onPage), pages - 1));
  return { page, pages, setPage, from: page * onPage };
}
