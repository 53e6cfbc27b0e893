/**
 * Runs before anything is drawn: marks that there is script, and takes up the light and the size of type that the reader has
 * chosen on this phone. Where nothing can be kept, the phone's own settings stand.
 */
document.documentElement.classList.add('script');
for (const name of ['light', 'type']) {
  try {
    const chosen = localStorage.getItem(`bladehand ${name}`);
    if (chosen) document.documentElement.dataset[name] = chosen;
  } catch {
    // A private window: nothing was chosen.
  }
}
