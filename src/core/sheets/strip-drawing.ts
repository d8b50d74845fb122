import type { SiteSettings } from '../site.js'
import type { StripInput, StripSize } from './strip.js'

/** What the drawing of one cover strip shows. */
export interface StripDrawing extends Pick<SiteSettings, 'lang' | 'units'> {
  readonly strip: StripInput
  readonly size: StripSize
  /** Least width of a weld. */
  readonly minWidthMm: number
}
