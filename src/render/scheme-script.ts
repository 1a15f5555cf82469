/**
 * Sets the colour scheme that the reader chose before anything is painted, so that no other is seen for a moment. It stands in every page
 * itself; the policy allows this one script by the hash of these very bytes. The switch comes later, with `scheme.js`.
 */
export const SCHEME_SCRIPT =
  "try{var s=localStorage.getItem('scheme');if(s==='paper'||s==='blueprint')document.documentElement.dataset.scheme=s}catch(e){}";
