const booking = document.querySelector('footwell-booking');
const booked = document.querySelector('#booked');

booking.data = await (await fetch('offer.json')).json();

// A real shop would send the booking to its own server here.
booking.addEventListener('footwell-book', ({ detail }) => {
  booked.textContent = `Thank you. We have noted “${detail.package.name}” for your ${detail.vehicle.vehicle.name}.`;
});
