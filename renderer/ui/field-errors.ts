/**
 * For every field that can be wrong: its error is only shown. Handed to the browser, it would keep the form from being
 * sent again, also after the person has mended the field.
 */
export const errorsOnlyShown = { validationBehavior: 'aria' } as const
