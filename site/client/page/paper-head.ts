/** The name of the page, which styles/print.css sets at the head of every sheet of paper after the first. */
addEventListener('beforeprint', () => {
  const name = document.title.replace(/ · Halfdry$/, '');
  document.documentElement.style.setProperty('--sheet', JSON.stringify(name));
});
