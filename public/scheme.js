// Offers the switch of the colour scheme. The stored scheme was set by the page itself; without scripts the page follows the system.
(function () {
  var root = document.documentElement;

  function current() {
    return root.dataset.scheme || (matchMedia('(prefers-color-scheme: dark)').matches ? 'blueprint' : 'paper');
  }

  function offerSwitch() {
    var button = document.querySelector('[data-scheme-switch]');
    if (!button) return;
    function label() {
      var now = current();
      button.textContent = now === 'paper' ? 'Paper scheme' : 'Blueprint scheme';
      button.setAttribute('aria-label', button.textContent + ', switch to ' + (now === 'paper' ? 'blueprint' : 'paper'));
    }
    button.hidden = false;
    label();
    button.addEventListener('click', function () {
      root.dataset.scheme = current() === 'paper' ? 'blueprint' : 'paper';
      try {
        localStorage.setItem('scheme', root.dataset.scheme);
      } catch (refused) {
        // Storage can be switched off; the choice then lasts for the page.
      }
      label();
    });
  }

  // Loaded without holding up the page, so the page may be read already.
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', offerSwitch);
  else offerSwitch();
})();
