/** passed and failed, of a probe and of a moisture test. */
export const passedWords = { en: 'passed', es: 'pasa pasó pasad(o,a,os,as) aprobad(o,a,os,as)', fr: 'bon(,ne,s,nes)' }
export const failedWords = { en: 'failed', es: 'rechazad(o,a,os,as)', fr: 'mauvais(,e,es)' }
