import { hashOf, placeOf, type Page, type Place } from './places.ts';

export class Route {
  #place = $state.raw<Place>(placeOf(location.hash));

  constructor() {
    $effect(() => {
      // Our own turn changes the address too, and is no news.
      const follow = () => {
        if (hashOf(this.#place) !== location.hash) this.#place = placeOf(location.hash);
      };
      addEventListener('hashchange', follow);
      return () => removeEventListener('hashchange', follow);
    });
  }

  get screen(): Page {
    return this.#place.screen;
  }

  /** The open bag; it stays open while the roster is looked at. */
  get bagId(): number | null {
    return this.#place.bagId;
  }

  /** @param bagId left out: the bag that is open stays open. */
  go(screen: Page, bagId: number | null = this.bagId): void {
    this.#place = { screen, bagId };
    const hash = hashOf(this.#place);
    if (location.hash !== hash) location.hash = hash;
  }
}
