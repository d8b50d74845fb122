/** Labels of the fields that set something: kits, what was laid, a site. */
export interface SetFieldWords {
  readonly set: string
  readonly speed: string
  readonly thick: string
  readonly operator: string
  readonly kitName: string
  readonly place: string
  readonly box: string
  readonly store: string
  readonly onDeck: string
  readonly placeT: string
  readonly lot: string
  readonly used: string
  readonly empty: string
  readonly areaLaid: string
  readonly sheets: string
  readonly byRobot: string
  readonly byHand: string
  readonly siteName: string
  readonly siteNameHint: string
  readonly latLon: string
  readonly latLonHint: string
  readonly zone: string
  readonly zoneHint: string
  readonly here: string
  readonly hereYes: string
  readonly hoursFrom: string
  readonly hoursTo: string
}
