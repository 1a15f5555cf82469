/** Gradients of the materials that parts are made of: light comes from the upper left. */
export const PAINTS = [
  across('aluminium', '#e9eef0', '#aab4b9', '#7d878c'),
  across('tin', '#e3e7e9', '#b4bcc0', '#8b9498'),
  across('steel', '#d9dee1', '#b9c1c5', '#8d969b'),
  across('lid', '#d7dde0', '#a2abb0', '#727b80'),
  across('sleeve', '#4a5258', '#23282c', '#101315'),
  across('epoxy', '#3a3e41', '#24272a', '#17191b'),
  across('ferrite', '#4d5256', '#34383c', '#212427'),
  across('moulded', '#6c7275', '#54595c', '#3b3f42'),
  across('resin', '#5c6264', '#44494b', '#2f3334'),
  across('tape', '#e5c35c', '#d2a93a', '#aa8426'),
  across('ceramic', '#d8c3a2', '#bfa37b', '#97805c'),
  across('white', '#f2f3ef', '#dcdfdb', '#b9bdb9'),
  across('filmYellow', '#efcf62', '#dcb23c', '#b08a24'),
  across('filmBlue', '#5b8fc4', '#3f6f9f', '#294c70'),
  across('filmRed', '#c07448', '#9d5730', '#6f3a1d'),
  across('discBlue', '#6690c6', '#3c639a', '#223c63'),
  across('discSky', '#8db7d6', '#5f8fb4', '#38607f'),
  across('discDark', '#54605a', '#333d38', '#1a211d'),
  across('copper', '#e2a06c', '#b9713c', '#7d4520'),
  down('copperAcross', '#8a4f27', '#e6a873', '#8a4f27'),
  down('roundUp', '#22272b', '#555d63', '#131618'),
  down('roundTeal', '#1f5a5c', '#5fa3a2', '#174446'),
  down('ceramicTube', '#b9a98c', '#efe6d2', '#a4936f'),
  down('brass', '#8f8468', '#efe9d3', '#7b7157'),
  down('sleeveMetal', '#3d4246', '#c9cfd2', '#2d3134'),
  across('mask', '#2c6a4c', '#1f5039', '#17402d'),
  across('bench', '#cfd2cf', '#bdc1be', '#a5aaa7'),
  down('caseTop', '#f4f5f3', '#e9ebe8', '#dcdfdc'),
  down('caseFront', '#d3d7d4', '#c3c8c5', '#a4aaa7'),
  down('darkTop', '#5a6065', '#4b5156', '#42484d'),
  down('darkFront', '#3a4045', '#2e3338', '#1f2327'),
  down('card', '#fbfbf8', '#f4f5f1', '#eceee9'),
  '<linearGradient id="rounding" x1="0" y1="0" x2="1" y2="0"><stop offset="0" stop-color="#fff" stop-opacity="0.3"/><stop offset="0.05" stop-color="#fff" stop-opacity="0"/><stop offset="0.94" stop-color="#000" stop-opacity="0"/><stop offset="1" stop-color="#000" stop-opacity="0.22"/></linearGradient>',
].join('');

function across(id: string, light: string, middle: string, dark: string): string {
  return gradient(id, 'x1="0" y1="0" x2="1" y2="1"', light, middle, dark);
}

function down(id: string, upper: string, middle: string, lower: string): string {
  return gradient(id, 'x1="0" y1="0" x2="0" y2="1"', upper, middle, lower);
}

function gradient(id: string, line: string, first: string, second: string, third: string): string {
  return `<linearGradient id="${id}" ${line}><stop offset="0" stop-color="${first}"/><stop offset="0.45" stop-color="${second}"/><stop offset="1" stop-color="${third}"/></linearGradient>`;
}
