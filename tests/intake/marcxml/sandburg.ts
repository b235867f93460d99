/**
 * The sample record of the Library of Congress, Sandburg, *Arithmetic*, in the fields that bear on an edition.
 * https://www.loc.gov/standards/marcxml/Sandburg/sandburg.xml
 */
export const sandburg = [
  'Leader 01142cam  2200301 a 4500',
  '001    92005291 ',
  '003 DLC',
  '005 19930521155141.9',
  '008 920219s1993    caua   j      000 0 eng  ',
  '010 ##$a   92005291 ',
  '020 ##$a0152038655 :',
  '040 ##$aDLC$cDLC$dDLC',
  '050 00$aPS3537.A618$bA88 1993',
  '100 1#$aSandburg, Carl,$d1878-1967.',
  '245 10$aArithmetic /$cCarl Sandburg ; illustrated as an anamorphic adventure by Ted Rand.',
  '250 ##$a1st ed.',
  '260 ##$aSan Diego :$bHarcourt Brace Jovanovich,$cc1993.',
  '300 ##$a1 v. (unpaged) :$bill. (some col.) ;$c26 cm.',
  '500 ##$aOne Mylar sheet included in pocket.',
  '650 #0$aArithmetic$xJuvenile poetry.',
  "650 #0$aChildren's poetry, American.",
  '700 1#$aRand, Ted,$eill.',
] as const;
