/**
 * How subjects begin that programs put over absence notes, in the languages whose labels are read, without accents. Common practice, no
 * published source. A word that people too write over a letter of their own, such as “Absence” alone, is left out.
 */
export const ABSENCE_SUBJECTS: Readonly<Record<"en" | "de" | "fr" | "it" | "es" | "nl" | "pl" | "pt", readonly string[]>> = {
  en: ["automatic reply", "automatic response", "automated reply", "auto reply", "auto-reply", "autoreply", "auto response", "auto-response", "autoresponse", "out of office", "out of the office"],
  de: ["abwesenheitsnotiz", "abwesenheitsnachricht", "abwesenheitsmeldung", "abwesenheitsassistent", "abwesenheitsinfo", "automatische antwort", "automatische ruckantwort", "automatische abwesenheitsnotiz", "nicht im buro", "ausser haus", "außer haus"],
  fr: ["reponse automatique", "message d'absence", "notification d'absence", "absence du bureau", "absent du bureau", "absente du bureau"],
  it: ["risposta automatica", "fuori sede", "fuori ufficio", "assenza dall'ufficio", "avviso di assenza", "messaggio di assenza"],
  es: ["respuesta automatica", "fuera de la oficina", "ausente de la oficina", "aviso de ausencia", "mensaje de ausencia"],
  nl: ["automatisch antwoord", "automatische beantwoording", "automatische reactie", "afwezigheidsbericht", "afwezigheidsmelding", "afwezigheidsassistent", "niet op kantoor"],
  pl: ["odpowiedz automatyczna", "automatyczna odpowiedz", "autoodpowiedz", "nieobecnosc w biurze", "poza biurem", "informacja o nieobecnosci"],
  pt: ["resposta automatica", "fora do escritorio", "ausencia do escritorio", "aviso de ausencia", "mensagem de ausencia"],
};
