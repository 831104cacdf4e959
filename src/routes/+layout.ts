/** Every page is written out as `name/index.html`, so that any static host serves it without rules of its own. */
export const prerender = true
export const trailingSlash = 'always'
