import inventedBag from './invented-bag.json' with { type: 'json' };
import rangeBag from './range-bag.json' with { type: 'json' };

/** The demos that ship: an invented player, and a bag whose carries are means of real shots (licence beside it). */
export function demoBag(name: 'invented-bag' | 'range-bag'): unknown {
  return name === 'invented-bag' ? inventedBag : rangeBag;
}
