const dialog = document.querySelector('#dialog');
document.querySelector('#open').addEventListener('click', () => dialog.showModal());
