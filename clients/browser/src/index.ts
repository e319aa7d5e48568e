import { FootwellBooking, type Booking } from './booking.js';
import { FootwellComparison } from './comparison.js';
import { FootwellPackages, type BookedPackage, type PackageQuestion, type PackagesAnswer } from './packages.js';
import { FootwellReview } from './review.js';

customElements.define('footwell-booking', FootwellBooking);
customElements.define('footwell-comparison', FootwellComparison);
customElements.define('footwell-packages', FootwellPackages);
customElements.define('footwell-review', FootwellReview);

declare global {
  interface HTMLElementTagNameMap {
    'footwell-booking': FootwellBooking;
    'footwell-comparison': FootwellComparison;
    'footwell-packages': FootwellPackages;
    'footwell-review': FootwellReview;
  }
  interface HTMLElementEventMap {
    'footwell-book': CustomEvent<Booking>;
  }
}

export { FootwellBooking, FootwellComparison, FootwellPackages, FootwellReview };
export type { Booking, BookedPackage, PackageQuestion, PackagesAnswer };
export type { Picture } from './picture.js';
export type { Offer, Package, Place, Vehicle } from './offer.js';
export { languages } from './languages.js';
export { english } from './texts.js';
export type { Texts } from './texts.js';
export * from './client.js';
