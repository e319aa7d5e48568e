const packages = document.querySelector('footwell-packages');
const booked = document.querySelector('#booked');

packages.data = await (await fetch('packages.json')).json();

// A real shop would send the plan to its own server here.
packages.addEventListener('footwell-book', ({ detail }) => {
  booked.textContent = `Thank you. We have noted ${detail.plan.drivers.length} loudspeakers for your ${detail.plan.vehicle.name}.`;
});
