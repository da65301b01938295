/** Saves the answers file, by the button or by Ctrl and S; or shows its text, to be copied by hand. */
export function saver(csv: () => string, saved: () => void, button: HTMLElement, byHand: HTMLDetailsElement, text: HTMLTextAreaElement) {
  let atRisk = false;
  const save = () => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([csv()], { type: 'text/csv' }));
    link.download = 'answers.csv';
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
    atRisk = false;
    saved();
  };
  button.addEventListener('click', save);
  addEventListener('keydown', (event) => {
    if (event.key !== 's' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    save();
  });
  const show = () => {
    if (byHand.open) text.value = csv().replace('\ufeff', '');
  };
  byHand.addEventListener('toggle', show);
  addEventListener('beforeunload', (event) => atRisk && event.preventDefault());
  return {
    /** Something was typed, which is lost with the page where the browser did not keep it. */
    changed(kept: boolean): void {
      atRisk = !kept;
      show();
    },
  };
}
