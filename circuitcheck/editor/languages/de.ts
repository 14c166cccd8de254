<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
<name>circuitcheck</name>
<message>
<source>(name of the language of this translation)</source>
<extracomment>window</extracomment>
<translation>Deutsch</translation>
</message>
<message>
<source>Apache License 2.0. The font Source Sans 3 is under the SIL Open Font License 1.1. The window is made with Qt, under the GNU Lesser General Public License 3.</source>
<extracomment>window</extracomment>
<translation>Apache-Lizenz 2.0. Die Schrift Source Sans 3 steht unter der SIL Open Font License 1.1. Das Fenster ist mit Qt gemacht, das unter der GNU Lesser General Public License 3 steht.</translation>
</message>
<message>
<source>Draws a heating and hot-water circuit, and proves it safe or shows the valve that makes it unsafe.

{care}

{licences}</source>
<extracomment>window</extracomment>
<translation>Zeichnet Kreise für Heizung und Warmwasser und weist nach, dass sie sicher sind, oder zeigt das Ventil, das sie unsicher macht.

{care}

{licences}</translation>
</message>
<message>
<source>Align &amp;left</source>
<extracomment>window</extracomment>
<translation>&amp;Links ausrichten</translation>
</message>
<message>
<source>Left edges in one line</source>
<extracomment>window</extracomment>
<translation>Linke Kanten auf einer Linie</translation>
</message>
<message>
<source>Align in a &amp;column</source>
<extracomment>window</extracomment>
<translation>In einer &amp;Spalte ausrichten</translation>
</message>
<message>
<source>One above the other, so that ports lie in one line</source>
<extracomment>window</extracomment>
<translation>Übereinander, sodass die Anschlüsse auf einer Linie liegen</translation>
</message>
<message>
<source>Align &amp;right</source>
<extracomment>window</extracomment>
<translation>&amp;Rechts ausrichten</translation>
</message>
<message>
<source>Right edges in one line</source>
<extracomment>window</extracomment>
<translation>Rechte Kanten auf einer Linie</translation>
</message>
<message>
<source>Align &amp;top</source>
<extracomment>window</extracomment>
<translation>&amp;Oben ausrichten</translation>
</message>
<message>
<source>Upper edges in one line</source>
<extracomment>window</extracomment>
<translation>Obere Kanten auf einer Linie</translation>
</message>
<message>
<source>Align in a ro&amp;w</source>
<extracomment>window</extracomment>
<translation>In einer &amp;Zeile ausrichten</translation>
</message>
<message>
<source>Side by side, so that ports lie in one line</source>
<extracomment>window</extracomment>
<translation>Nebeneinander, sodass die Anschlüsse auf einer Linie liegen</translation>
</message>
<message>
<source>Align &amp;bottom</source>
<extracomment>window</extracomment>
<translation>&amp;Unten ausrichten</translation>
</message>
<message>
<source>Lower edges in one line</source>
<extracomment>window</extracomment>
<translation>Untere Kanten auf einer Linie</translation>
</message>
<message>
<source>&amp;New</source>
<extracomment>window</extracomment>
<translation>&amp;Neu</translation>
</message>
<message>
<source>Begin an empty drawing</source>
<extracomment>window</extracomment>
<translation>Eine leere Zeichnung beginnen</translation>
</message>
<message>
<source>&amp;Open…</source>
<extracomment>window</extracomment>
<translation>&amp;Öffnen…</translation>
</message>
<message>
<source>Open a drawing</source>
<extracomment>window</extracomment>
<translation>Eine Zeichnung öffnen</translation>
</message>
<message>
<source>&amp;Save</source>
<extracomment>window</extracomment>
<translation>&amp;Speichern</translation>
</message>
<message>
<source>Save the drawing</source>
<extracomment>window</extracomment>
<translation>Die Zeichnung speichern</translation>
</message>
<message>
<source>Save &amp;as…</source>
<extracomment>window</extracomment>
<translation>Speichern &amp;unter…</translation>
</message>
<message>
<source>Save the drawing under another name</source>
<extracomment>window</extracomment>
<translation>Die Zeichnung unter einem anderen Namen speichern</translation>
</message>
<message>
<source>New &amp;window</source>
<extracomment>window</extracomment>
<translation>Neues &amp;Fenster</translation>
</message>
<message>
<source>A window beside this one, with a drawing of its own</source>
<extracomment>window</extracomment>
<translation>Ein Fenster neben diesem, mit einer eigenen Zeichnung</translation>
</message>
<message>
<source>&amp;Close the window</source>
<extracomment>window</extracomment>
<translation>Fenster s&amp;chließen</translation>
</message>
<message>
<source>Close this window</source>
<extracomment>window</extracomment>
<translation>Dieses Fenster schließen</translation>
</message>
<message>
<source>&amp;Quit</source>
<extracomment>window</extracomment>
<translation>&amp;Beenden</translation>
</message>
<message>
<source>Close every window</source>
<extracomment>window</extracomment>
<translation>Alle Fenster schließen</translation>
</message>
<message>
<source>&amp;Undo</source>
<extracomment>window</extracomment>
<translation>&amp;Rückgängig</translation>
</message>
<message>
<source>Take the last step back</source>
<extracomment>window</extracomment>
<translation>Den letzten Schritt zurücknehmen</translation>
</message>
<message>
<source>&amp;Redo</source>
<extracomment>window</extracomment>
<translation>&amp;Wiederholen</translation>
</message>
<message>
<source>Make the step again</source>
<extracomment>window</extracomment>
<translation>Den Schritt noch einmal tun</translation>
</message>
<message>
<source>&amp;Delete</source>
<extracomment>window</extracomment>
<translation>&amp;Löschen</translation>
</message>
<message>
<source>Delete what is selected; pipes heal</source>
<extracomment>window</extracomment>
<translation>Die Auswahl löschen; Rohre schließen sich wieder</translation>
</message>
<message>
<source>Select &amp;all</source>
<extracomment>window</extracomment>
<translation>&amp;Alles auswählen</translation>
</message>
<message>
<source>Select everything</source>
<extracomment>window</extracomment>
<translation>Alles auswählen</translation>
</message>
<message>
<source>Cu&amp;t</source>
<extracomment>window</extracomment>
<translation>A&amp;usschneiden</translation>
</message>
<message>
<source>Take what is selected out, to paste it elsewhere</source>
<extracomment>window</extracomment>
<translation>Die Auswahl herausnehmen, um sie anderswo einzufügen</translation>
</message>
<message>
<source>&amp;Copy</source>
<extracomment>window</extracomment>
<translation>&amp;Kopieren</translation>
</message>
<message>
<source>Copy what is selected, for a drawing or as a picture</source>
<extracomment>window</extracomment>
<translation>Die Auswahl kopieren, für eine Zeichnung oder als Bild</translation>
</message>
<message>
<source>&amp;Paste</source>
<extracomment>window</extracomment>
<translation>&amp;Einfügen</translation>
</message>
<message>
<source>Put in what was copied, where the pointer or the caret is</source>
<extracomment>window</extracomment>
<translation>Das Kopierte einfügen, wo der Zeiger oder die Schreibmarke steht</translation>
</message>
<message>
<source>D&amp;uplicate</source>
<extracomment>window</extracomment>
<translation>&amp;Verdoppeln</translation>
</message>
<message>
<source>What is selected once more, a little aside</source>
<extracomment>window</extracomment>
<translation>Die Auswahl noch einmal, ein wenig daneben</translation>
</message>
<message>
<source>Re&amp;name…</source>
<extracomment>window</extracomment>
<translation>U&amp;mbenennen…</translation>
</message>
<message>
<source>The label of what is selected, in the details</source>
<extracomment>window</extracomment>
<translation>Die Bezeichnung der Auswahl, in den Einzelheiten</translation>
</message>
<message>
<source>&amp;Find in the drawing…</source>
<extracomment>window</extracomment>
<translation>In der Zeichnung &amp;suchen…</translation>
</message>
<message>
<source>A part or pipe by its label, kind or id</source>
<extracomment>window</extracomment>
<translation>Ein Bauteil oder Rohr nach Bezeichnung, Art oder Kennung</translation>
</message>
<message>
<source>Find the ne&amp;xt</source>
<extracomment>window</extracomment>
<translation>&amp;Nächstes suchen</translation>
</message>
<message>
<source>The next of what was found last</source>
<extracomment>window</extracomment>
<translation>Das nächste des zuletzt Gesuchten</translation>
</message>
<message>
<source>Find the one &amp;before</source>
<extracomment>window</extracomment>
<translation>V&amp;origes suchen</translation>
</message>
<message>
<source>Back among what was found last</source>
<extracomment>window</extracomment>
<translation>Zurück im zuletzt Gesuchten</translation>
</message>
<message>
<source>Search the co&amp;mmands…</source>
<extracomment>window</extracomment>
<translation>&amp;Befehl suchen…</translation>
</message>
<message>
<source>Any command by its name</source>
<extracomment>window</extracomment>
<translation>Jeder Befehl nach seinem Namen</translation>
</message>
<message>
<source>Zoom &amp;in</source>
<extracomment>window</extracomment>
<translation>Ver&amp;größern</translation>
</message>
<message>
<source>Larger</source>
<extracomment>window</extracomment>
<translation>Größer</translation>
</message>
<message>
<source>Zoom &amp;out</source>
<extracomment>window</extracomment>
<translation>Ver&amp;kleinern</translation>
</message>
<message>
<source>Smaller</source>
<extracomment>window</extracomment>
<translation>Kleiner</translation>
</message>
<message>
<source>One square is 16 px</source>
<extracomment>window</extracomment>
<translation>Ein Feld ist 16 px groß</translation>
</message>
<message>
<source>&amp;Fit the drawing</source>
<extracomment>window</extracomment>
<translation>Ganze &amp;Zeichnung</translation>
</message>
<message>
<source>The whole drawing in the window</source>
<extracomment>window</extracomment>
<translation>Die ganze Zeichnung im Fenster</translation>
</message>
<message>
<source>&amp;Next finding</source>
<extracomment>window</extracomment>
<translation>&amp;Nächster Befund</translation>
</message>
<message>
<source>Choose the next finding</source>
<extracomment>window</extracomment>
<translation>Den nächsten Befund wählen</translation>
</message>
<message>
<source>&amp;Previous finding</source>
<extracomment>window</extracomment>
<translation>&amp;Voriger Befund</translation>
</message>
<message>
<source>Choose the finding before</source>
<extracomment>window</extracomment>
<translation>Den Befund davor wählen</translation>
</message>
<message>
<source>To the next a&amp;rea</source>
<extracomment>window</extracomment>
<translation>Zum nächsten Be&amp;reich</translation>
</message>
<message>
<source>The keyboard goes on: sheet, parts, details, findings, what is open</source>
<extracomment>window</extracomment>
<translation>Die Tastatur geht weiter: Blatt, Bauteile, Einzelheiten, Befunde, was offen ist</translation>
</message>
<message>
<source>To the area &amp;before</source>
<extracomment>window</extracomment>
<translation>Zum &amp;Bereich davor</translation>
</message>
<message>
<source>The keyboard goes back by one area</source>
<extracomment>window</extracomment>
<translation>Die Tastatur geht um einen Bereich zurück</translation>
</message>
<message>
<source>&amp;Leave the finding</source>
<extracomment>window</extracomment>
<translation>Befund ver&amp;lassen</translation>
</message>
<message>
<source>The drawing as it was (Escape)</source>
<extracomment>window</extracomment>
<translation>Die Zeichnung, wie sie war (Esc)</translation>
</message>
<message>
<source>&amp;Place a part…</source>
<extracomment>window</extracomment>
<translation>Bauteil &amp;platzieren…</translation>
</message>
<message>
<source>Find a part by typing and place it; letters do the same</source>
<extracomment>window</extracomment>
<translation>Ein Bauteil durch Tippen suchen und platzieren; Buchstaben tun dasselbe</translation>
</message>
<message>
<source>Find on the &amp;shelf</source>
<extracomment>window</extracomment>
<translation>Im &amp;Regal suchen</translation>
</message>
<message>
<source>Find a part among the parts to the left</source>
<extracomment>window</extracomment>
<translation>Ein Bauteil unter den Bauteilen links suchen</translation>
</message>
<message>
<source>Place a&amp;gain</source>
<extracomment>window</extracomment>
<translation>&amp;Noch einmal platzieren</translation>
</message>
<message>
<source>One more of the kind placed last</source>
<extracomment>window</extracomment>
<translation>Noch eines von der zuletzt platzierten Art</translation>
</message>
<message>
<source>&amp;Keep placing</source>
<extracomment>window</extracomment>
<translation>&amp;Weiter platzieren</translation>
</message>
<message>
<source>After each part the next of its kind is in hand</source>
<extracomment>window</extracomment>
<translation>Nach jedem Bauteil ist das nächste seiner Art zur Hand</translation>
</message>
<message>
<source>&amp;Draw a pipe from here</source>
<extracomment>window</extracomment>
<translation>Von hier ein Rohr &amp;zeichnen</translation>
</message>
<message>
<source>From the part that is selected or the caret, by keys</source>
<extracomment>window</extracomment>
<translation>Vom ausgewählten Bauteil oder von der Schreibmarke aus, mit Tasten</translation>
</message>
<message>
<source>&amp;Let the program route it</source>
<extracomment>window</extracomment>
<translation>Vom Programm &amp;verlegen lassen</translation>
</message>
<message>
<source>Corners that were set by hand go</source>
<extracomment>window</extracomment>
<translation>Von Hand gesetzte Ecken entfallen</translation>
</message>
<message>
<source>Spread a&amp;cross</source>
<extracomment>window</extracomment>
<translation>W&amp;aagerecht verteilen</translation>
</message>
<message>
<source>Alike gaps from left to right</source>
<extracomment>window</extracomment>
<translation>Gleiche Abstände von links nach rechts</translation>
</message>
<message>
<source>Spread d&amp;own</source>
<extracomment>window</extracomment>
<translation>S&amp;enkrecht verteilen</translation>
</message>
<message>
<source>Alike gaps from top to bottom</source>
<extracomment>window</extracomment>
<translation>Gleiche Abstände von oben nach unten</translation>
</message>
<message>
<source>&amp;Turn</source>
<extracomment>window</extracomment>
<translation>&amp;Drehen</translation>
</message>
<message>
<source>Turn what is selected by a quarter, clockwise</source>
<extracomment>window</extracomment>
<translation>Die Auswahl um ein Viertel im Uhrzeigersinn drehen</translation>
</message>
<message>
<source>&amp;Mirror</source>
<extracomment>window</extracomment>
<translation>&amp;Spiegeln</translation>
</message>
<message>
<source>Mirror what is selected, left to right</source>
<extracomment>window</extracomment>
<translation>Die Auswahl spiegeln, links gegen rechts</translation>
</message>
<message>
<source>&amp;About circuitcheck</source>
<extracomment>window</extracomment>
<translation>Ü&amp;ber circuitcheck</translation>
</message>
<message>
<source>Version, licence and words of care</source>
<extracomment>window</extracomment>
<translation>Version, Lizenz und Worte zur Vorsicht</translation>
</message>
<message>
<source>&amp;Report of a failure…</source>
<extracomment>window</extracomment>
<translation>Beri&amp;cht über einen Fehler…</translation>
</message>
<message>
<source>What the program has noted of its own failures, to hand on by hand</source>
<extracomment>window</extracomment>
<translation>Was das Programm über eigene Fehler aufgezeichnet hat, um es selbst weiterzugeben</translation>
</message>
<message>
<source>&amp;Undo {step}</source>
<extracomment>window</extracomment>
<translation>&amp;Rückgängig: {step}</translation>
</message>
<message>
<source>&amp;Redo {step}</source>
<extracomment>window</extracomment>
<translation>&amp;Wiederholen: {step}</translation>
</message>
<message>
<source>&amp;Align and spread</source>
<extracomment>window</extracomment>
<translation>&amp;Ausrichten und verteilen</translation>
</message>
<message>
<source>The colours of the window and the sheet</source>
<extracomment>window</extracomment>
<translation>Die Farben des Fensters und des Blatts</translation>
</message>
<message>
<source>&amp;Appearance</source>
<extracomment>window</extracomment>
<translation>Darst&amp;ellung</translation>
</message>
<message>
<source>&amp;Language</source>
<extracomment>window</extracomment>
<translation>&amp;Sprache</translation>
</message>
<message>
<source>The language of the window, from the next start on</source>
<extracomment>window</extracomment>
<translation>Die Sprache des Fensters, vom nächsten Start an</translation>
</message>
<message>
<source>The checks failed inside the program and have judged nothing: {error}.</source>
<extracomment>window</extracomment>
<translation>Die Prüfungen sind im Programm gescheitert und haben nichts beurteilt: {error}.</translation>
</message>
<message>
<source>it failed inside the program</source>
<extracomment>window</extracomment>
<translation>sie ist im Programm gescheitert</translation>
</message>
<message>
<source>Untitled drawing</source>
<extracomment>window</extracomment>
<translation>Zeichnung ohne Titel</translation>
</message>
<message>
<source>Nothing drawn</source>
<extracomment>window</extracomment>
<translation>Nichts gezeichnet</translation>
</message>
<message>
<source>Judging…</source>
<extracomment>window</extracomment>
<translation>Wird geprüft…</translation>
</message>
<message>
<source>Nothing judged</source>
<extracomment>window</extracomment>
<translation>Nichts beurteilt</translation>
</message>
<message>
<source>Nothing found</source>
<extracomment>window</extracomment>
<translation>Nichts gefunden</translation>
</message>
<message>
<source>The window speaks that language from the next start on.</source>
<extracomment>window</extracomment>
<translation>Das Fenster spricht diese Sprache vom nächsten Start an.</translation>
</message>
<message>
<source>There is nothing on the clipboard that can be put into a drawing.</source>
<extracomment>window</extracomment>
<translation>In der Zwischenablage ist nichts, was in eine Zeichnung eingefügt werden kann.</translation>
</message>
<message>
<source>What is on the clipboard is too large for a drawing. Nothing was put in.</source>
<extracomment>window</extracomment>
<translation>Was in der Zwischenablage ist, ist zu groß für eine Zeichnung. Es wurde nichts eingefügt.</translation>
</message>
<message>
<source>What is on the clipboard cannot be read as parts of a drawing.</source>
<extracomment>window</extracomment>
<translation>Was in der Zwischenablage ist, kann nicht als Teil einer Zeichnung gelesen werden.</translation>
</message>
<message>
<source>1 more thing is wrong with it.</source>
<extracomment>window</extracomment>
<translation>1 weiterer Fehler ist darin.</translation>
</message>
<message>
<source>{count} more things are wrong with it.</source>
<extracomment>window</extracomment>
<translation>{count} weitere Fehler sind darin.</translation>
</message>
<message>
<source>Nothing was put in.</source>
<extracomment>window</extracomment>
<translation>Es wurde nichts eingefügt.</translation>
</message>
<message>
<source>The drawing on the clipboard is empty. Nothing was put in.</source>
<extracomment>window</extracomment>
<translation>Die Zeichnung in der Zwischenablage ist leer. Es wurde nichts eingefügt.</translation>
</message>
<message>
<source>Search the commands</source>
<extracomment>window</extracomment>
<translation>Befehle durchsuchen</translation>
</message>
<message>
<source>No command is called that.</source>
<extracomment>window</extracomment>
<translation>Kein Befehl heißt so.</translation>
</message>
<message>
<source>Place {part}</source>
<extracomment>window</extracomment>
<translation>{part} platzieren</translation>
</message>
<message>
<source>{file} was changed by somebody else since it was opened here.</source>
<extracomment>window</extracomment>
<translation>{file} wurde von jemand anderem geändert, seit die Datei hier geöffnet wurde.</translation>
</message>
<message>
<source>1 part</source>
<extracomment>window</extracomment>
<translation>1 Bauteil</translation>
</message>
<message>
<source>{count} parts</source>
<extracomment>window</extracomment>
<translation>{count} Bauteile</translation>
</message>
<message>
<source>1 pipe</source>
<extracomment>window</extracomment>
<translation>1 Rohr</translation>
</message>
<message>
<source>{count} pipes</source>
<extracomment>window</extracomment>
<translation>{count} Rohre</translation>
</message>
<message>
<source>Copied: {parts} and {pipes}.</source>
<extracomment>window</extracomment>
<translation>Kopiert: {parts} und {pipes}.</translation>
</message>
<message>
<source>Cut</source>
<extracomment>window</extracomment>
<translation>ausschneiden</translation>
</message>
<message>
<source>Nothing was pasted.</source>
<extracomment>window</extracomment>
<translation>Es wurde nichts eingefügt.</translation>
</message>
<message>
<source>With this the drawing would have more parts than a file can hold.</source>
<extracomment>window</extracomment>
<translation>Damit hätte die Zeichnung mehr Bauteile, als eine Datei fassen kann.</translation>
</message>
<message>
<source>Cut a part &amp;in…</source>
<extracomment>window</extracomment>
<translation>Bauteil e&amp;insetzen…</translation>
</message>
<message>
<source>Find a part by typing and put it into this pipe</source>
<extracomment>window</extracomment>
<translation>Ein Bauteil durch Tippen suchen und in dieses Rohr einsetzen</translation>
</message>
<message>
<source>The program sends nothing to anybody. If you want to help to mend it, hand on this report yourself. It holds just what stands here, and not the drawing. Names of your files or parts can be in it: take out what is nobody’s business.</source>
<extracomment>window/failing</extracomment>
<translation>Das Programm sendet niemandem etwas. Wenn Sie helfen wollen, den Fehler zu beheben, geben Sie diesen Bericht selbst weiter. Er enthält nur, was hier steht, und nicht die Zeichnung. Namen Ihrer Dateien oder Bauteile können darin vorkommen: Nehmen Sie heraus, was niemanden angeht.</translation>
</message>
<message>
<source>&amp;Copy the report</source>
<extracomment>window/failing</extracomment>
<translation>Bericht &amp;kopieren</translation>
</message>
<message>
<source>&amp;Save the report…</source>
<extracomment>window/failing</extracomment>
<translation>Bericht &amp;speichern…</translation>
</message>
<message>
<source>The report is on the clipboard. Paste it before you close the program.</source>
<extracomment>window/failing</extracomment>
<translation>Der Bericht ist in der Zwischenablage. Fügen Sie ihn ein, bevor Sie das Programm schließen.</translation>
</message>
<message>
<source>Save the report</source>
<extracomment>window/failing</extracomment>
<translation>Bericht speichern</translation>
</message>
<message>
<source>Text (*{ending})</source>
<extracomment>window/failing</extracomment>
<translation>Text (*{ending})</translation>
</message>
<message>
<source>The report is saved as {name}.</source>
<extracomment>window/failing</extracomment>
<translation>Der Bericht ist als {name} gespeichert.</translation>
</message>
<message>
<source>Nothing was unsaved, so nothing is lost.</source>
<extracomment>window/failing</extracomment>
<translation>Es war nichts ungespeichert, also ist nichts verloren.</translation>
</message>
<message>
<source>The drawing that was not saved is kept. It is offered to you when the program starts again.</source>
<extracomment>window/failing</extracomment>
<translation>Die Zeichnung, die nicht gespeichert war, ist aufgehoben. Sie wird Ihnen beim nächsten Start des Programms angeboten.</translation>
</message>
<message>
<source>The {count} drawings that were not saved are kept. They are offered to you when the program starts again.</source>
<extracomment>window/failing</extracomment>
<translation>Die {count} Zeichnungen, die nicht gespeichert waren, sind aufgehoben. Sie werden Ihnen beim nächsten Start des Programms angeboten.</translation>
</message>
<message>
<source>Something went wrong, and the program has to close.</source>
<extracomment>window/failing</extracomment>
<translation>Es ist etwas schiefgegangen, und das Programm muss sich schließen.</translation>
</message>
<message>
<source>Close the &amp;program</source>
<extracomment>window/failing</extracomment>
<translation>&amp;Programm schließen</translation>
</message>
<message>
<source>Below is the end of what it has noted on this machine.</source>
<extracomment>window/failing</extracomment>
<translation>Unten steht das Ende dessen, was es auf diesem Rechner aufgezeichnet hat.</translation>
</message>
<message>
<source>Nothing has gone wrong that the program knows of.</source>
<extracomment>window/failing</extracomment>
<translation>Es ist nichts schiefgegangen, wovon das Programm weiß.</translation>
</message>
<message>
<source>What the program has noted of its own failures</source>
<extracomment>window/failing</extracomment>
<translation>Was das Programm über eigene Fehler aufgezeichnet hat</translation>
</message>
<message>
<source>C&amp;lose</source>
<extracomment>window/failing</extracomment>
<translation>S&amp;chließen</translation>
</message>
<message>
<source>The report</source>
<extracomment>window/failing</extracomment>
<translation>Der Bericht</translation>
</message>
<message>
<source>How it is worked</source>
<extracomment>window/figures</extracomment>
<translation>Rechenweg</translation>
</message>
<message>
<source>Holds</source>
<extracomment>window/figures</extracomment>
<translation>Gilt für</translation>
</message>
<message>
<source>Source</source>
<extracomment>window/figures</extracomment>
<translation>Quelle</translation>
</message>
<message>
<source>Copy</source>
<extracomment>window/figures</extracomment>
<translation>Kopieren</translation>
</message>
<message>
<source>Copy this figure with its working as text (Ctrl+C)</source>
<extracomment>window/figures</extracomment>
<translation>Diese Berechnung mit ihrem Rechenweg als Text kopieren (Strg+C)</translation>
</message>
<message>
<source>Copy: {title}</source>
<extracomment>window/figures</extracomment>
<translation>Kopieren: {title}</translation>
</message>
<message>
<source>Fold this figure (Escape)</source>
<extracomment>window/figures</extracomment>
<translation>Diese Berechnung zuklappen (Esc)</translation>
</message>
<message>
<source>Fold this figure</source>
<extracomment>window/figures</extracomment>
<translation>Diese Berechnung zuklappen</translation>
</message>
<message>
<source>The whole drawing</source>
<extracomment>window/figures</extracomment>
<translation>Die ganze Zeichnung</translation>
</message>
<message>
<source>Show it on the sheet</source>
<extracomment>window/figures</extracomment>
<translation>Auf dem Blatt zeigen</translation>
</message>
<message>
<source>Not kept to</source>
<extracomment>window/figures</extracomment>
<translation>Nicht eingehalten</translation>
</message>
<message>
<source>What puts it right</source>
<extracomment>window/figures</extracomment>
<translation>Abhilfe</translation>
</message>
<message>
<source>Missing</source>
<extracomment>window/figures</extracomment>
<translation>Es fehlt</translation>
</message>
<message>
<source>From</source>
<extracomment>window/figures</extracomment>
<translation>Woraus</translation>
</message>
<message>
<source>Change it where it lives</source>
<extracomment>window/figures</extracomment>
<translation>Ändern, wo der Wert steht</translation>
</message>
<message>
<source>Open that figure</source>
<extracomment>window/figures</extracomment>
<translation>Diese Berechnung öffnen</translation>
</message>
<message>
<source>Rests on usual values</source>
<extracomment>window/figures</extracomment>
<translation>Beruht auf üblichen Werten</translation>
</message>
<message>
<source>Show {count} more</source>
<extracomment>window/figures</extracomment>
<translation>{count} weitere zeigen</translation>
</message>
<message>
<source>No figure applies to this drawing.</source>
<extracomment>window/figures</extracomment>
<translation>Keine Berechnung trifft auf diese Zeichnung zu.</translation>
</message>
<message>
<source>No figure is called so.</source>
<extracomment>window/figures</extracomment>
<translation>Keine Berechnung heißt so.</translation>
</message>
<message>
<source>The figures failed inside the program; none is shown.</source>
<extracomment>window/figures</extracomment>
<translation>Die Berechnungen sind im Programm gescheitert; es wird keine gezeigt.</translation>
</message>
<message>
<source>Working out the figures…</source>
<extracomment>window/figures</extracomment>
<translation>Es wird gerechnet…</translation>
</message>
<message>
<source>Working out the figures anew: these are of the drawing before the last step.</source>
<extracomment>window/figures</extracomment>
<translation>Es wird neu gerechnet: Diese Werte gehören zur Zeichnung vor dem letzten Schritt.</translation>
</message>
<message>
<source>working out…</source>
<extracomment>window/figures</extracomment>
<translation>wird gerechnet…</translation>
</message>
<message>
<source>Of the drawing before the last step:</source>
<extracomment>window/figures</extracomment>
<translation>Zur Zeichnung vor dem letzten Schritt:</translation>
</message>
<message>
<source>Find a figure</source>
<extracomment>window/figures</extracomment>
<translation>Berechnung suchen</translation>
</message>
<message>
<source>Figures</source>
<extracomment>window/figures</extracomment>
<translation>Berechnungen</translation>
</message>
<message>
<source>given in the drawing</source>
<extracomment>window/figures</extracomment>
<translation>in der Zeichnung angegeben</translation>
</message>
<message>
<source>usual value, not given</source>
<extracomment>window/figures</extracomment>
<translation>üblicher Wert, nicht angegeben</translation>
</message>
<message>
<source>measured on the sheet</source>
<extracomment>window/figures</extracomment>
<translation>auf dem Blatt gemessen</translation>
</message>
<message>
<source>counted on the sheet</source>
<extracomment>window/figures</extracomment>
<translation>auf dem Blatt gezählt</translation>
</message>
<message>
<source>{count} more</source>
<extracomment>window/figures</extracomment>
<translation>{count} weitere</translation>
</message>
<message>
<source>and {count} more</source>
<extracomment>window/figures</extracomment>
<translation>und {count} weitere</translation>
</message>
<message>
<source>Not worked: 1 number is missing.</source>
<extracomment>window/figures</extracomment>
<translation>Nicht berechnet: 1 Angabe fehlt.</translation>
</message>
<message>
<source>Not worked: {count} numbers are missing.</source>
<extracomment>window/figures</extracomment>
<translation>Nicht berechnet: {count} Angaben fehlen.</translation>
</message>
<message>
<source>Not worked: {why}.</source>
<extracomment>window/figures</extracomment>
<translation>Nicht berechnet: {why}.</translation>
</message>
<message>
<source>from the figure</source>
<extracomment>window/figures</extracomment>
<translation>aus der Berechnung</translation>
</message>
<message>
<source>{worked} worked, {refused} not</source>
<extracomment>window/figures</extracomment>
<translation>{worked} berechnet, {refused} nicht</translation>
</message>
<message>
<source>{worked} worked</source>
<extracomment>window/figures</extracomment>
<translation>{worked} berechnet</translation>
</message>
<message>
<source>Open &amp;recent</source>
<extracomment>window</extracomment>
<translation>&amp;Zuletzt geöffnet</translation>
</message>
<message>
<source>Open a sa&amp;mple</source>
<extracomment>window</extracomment>
<translation>Be&amp;ispiel öffnen</translation>
</message>
<message>
<source>No samples are installed</source>
<extracomment>window</extracomment>
<translation>Es sind keine Beispiele installiert</translation>
</message>
<message>
<source>No files yet</source>
<extracomment>window</extracomment>
<translation>Noch keine Dateien</translation>
</message>
<message>
<source>&amp;Clear the list</source>
<extracomment>window</extracomment>
<translation>Liste &amp;leeren</translation>
</message>
<message>
<source>Drawings (*{ending})</source>
<extracomment>window</extracomment>
<translation>Zeichnungen (*{ending})</translation>
</message>
<message>
<source>All files (*)</source>
<extracomment>window</extracomment>
<translation>Alle Dateien (*)</translation>
</message>
<message>
<source>this drawing</source>
<extracomment>window</extracomment>
<translation>diese Zeichnung</translation>
</message>
<message>
<source>Save the changes to {name}?</source>
<extracomment>window</extracomment>
<translation>Änderungen an {name} speichern?</translation>
</message>
<message>
<source>Without saving they are lost.</source>
<extracomment>window</extracomment>
<translation>Ohne Speichern gehen sie verloren.</translation>
</message>
<message>
<source>{file} exists already. Replace it?</source>
<extracomment>window</extracomment>
<translation>{file} gibt es schon. Ersetzen?</translation>
</message>
<message>
<source>Replacing it discards what was changed there. Saving under another name keeps both.</source>
<extracomment>window</extracomment>
<translation>Beim Ersetzen geht verloren, was dort geändert wurde. Unter einem anderen Namen gespeichert, bleibt beides erhalten.</translation>
</message>
<message>
<source>Replace</source>
<extracomment>window</extracomment>
<translation>Ersetzen</translation>
</message>
<message>
<source>Save as…</source>
<extracomment>window</extracomment>
<translation>Speichern unter…</translation>
</message>
<message>
<source>{file} cannot be opened.</source>
<extracomment>window</extracomment>
<translation>{file} kann nicht geöffnet werden.</translation>
</message>
<message>
<source>cannot be saved.</source>
<extracomment>window</extracomment>
<translation>kann nicht gespeichert werden.</translation>
</message>
<message>
<source>The drawing here is as it was. Save it elsewhere, or try again.</source>
<extracomment>window</extracomment>
<translation>Die Zeichnung hier ist, wie sie war. Speichern Sie sie anderswo, oder versuchen Sie es noch einmal.</translation>
</message>
<message>
<source>{count} things are wrong with it. The first: {first}</source>
<extracomment>window</extracomment>
<translation>{count} Fehler sind darin. Der erste: {first}</translation>
</message>
<message>
<source>cannot be read.</source>
<extracomment>window</extracomment>
<translation>kann nicht gelesen werden.</translation>
</message>
<message>
<source>filled in</source>
<extracomment>window/fill_in</extracomment>
<translation>ausgefüllt</translation>
</message>
<message>
<source>A verdict rests on the usual value</source>
<extracomment>window/fill_in</extracomment>
<translation>Ein Urteil beruht auf dem üblichen Wert</translation>
</message>
<message>
<source>The drawing</source>
<extracomment>window/fill_in</extracomment>
<translation>Die Zeichnung</translation>
</message>
<message>
<source>a free end</source>
<extracomment>window/fill_in</extracomment>
<translation>einem freien Ende</translation>
</message>
<message>
<source>Pipe {id}, {start} to {finish}</source>
<extracomment>window/fill_in</extracomment>
<translation>Rohr {id}, von {start} zu {finish}</translation>
</message>
<message>
<source>not known</source>
<extracomment>window/fill_in</extracomment>
<translation>nicht bekannt</translation>
</message>
<message>
<source>not known, kept</source>
<extracomment>window/fill_in</extracomment>
<translation>nicht bekannt, so belassen</translation>
</message>
<message>
<source>usual</source>
<extracomment>window/fill_in</extracomment>
<translation>üblich</translation>
</message>
<message>
<source>more than {above}, at most {most}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation>mehr als {above}, höchstens {most}{unit}</translation>
</message>
<message>
<source>more than {above}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation>mehr als {above}{unit}</translation>
</message>
<message>
<source>from {least} to {most}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation>von {least} bis {most}{unit}</translation>
</message>
<message>
<source>at least {least}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation>mindestens {least}{unit}</translation>
</message>
<message>
<source>at most {most}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation>höchstens {most}{unit}</translation>
</message>
<message>
<source>figure: {names}</source>
<extracomment>window/fill_in</extracomment>
<translation>Berechnung: {names}</translation>
</message>
<message>
<source>figures: {names}</source>
<extracomment>window/fill_in</extracomment>
<translation>Berechnungen: {names}</translation>
</message>
<message>
<source>A number in {unit}.</source>
<extracomment>window/fill_in</extracomment>
<translation>Eine Zahl in {unit}.</translation>
</message>
<message>
<source>It must be {limits}.</source>
<extracomment>window/fill_in</extracomment>
<translation>Zulässig: {limits}.</translation>
</message>
<message>
<source>A verdict rests on this usual value.</source>
<extracomment>window/fill_in</extracomment>
<translation>Ein Urteil beruht auf diesem üblichen Wert.</translation>
</message>
<message>
<source>No check or figure waits for it now.</source>
<extracomment>window/fill_in</extracomment>
<translation>Keine Prüfung oder Berechnung wartet jetzt darauf.</translation>
</message>
<message>
<source>The checks are still judging.</source>
<extracomment>window/fill_in</extracomment>
<translation>Die Prüfungen laufen noch.</translation>
</message>
<message>
<source>Needed by: {these}.</source>
<extracomment>window/fill_in</extracomment>
<translation>Gebraucht von: {these}.</translation>
</message>
<message>
<source>{title} (would be {grade}, not judged without it)</source>
<extracomment>window/fill_in</extracomment>
<translation>{title} (wäre: {grade}, ohne den Wert nicht beurteilt)</translation>
</message>
<message>
<source>{title} (would be {grade})</source>
<extracomment>window/fill_in</extracomment>
<translation>{title} (wäre: {grade})</translation>
</message>
<message>
<source>{label}: “{said}” is neither yes nor no.</source>
<extracomment>window/fill_in</extracomment>
<translation>{label}: „{said}“ ist weder ja noch nein.</translation>
</message>
<message>
<source>{label}: “{said}” cannot be set. It is one of {options}.</source>
<extracomment>window/fill_in</extracomment>
<translation>{label}: „{said}“ ist nicht möglich. Zur Wahl stehen: {options}.</translation>
</message>
<message>
<source>Part or pipe</source>
<extracomment>window/fill_in</extracomment>
<translation>Bauteil oder Rohr</translation>
</message>
<message>
<source>What</source>
<extracomment>window/fill_in</extracomment>
<translation>Angabe</translation>
</message>
<message>
<source>Value</source>
<extracomment>window/fill_in</extracomment>
<translation>Wert</translation>
</message>
<message>
<source>Needed by</source>
<extracomment>window/fill_in</extracomment>
<translation>Gebraucht von</translation>
</message>
<message>
<source>Every number is known.</source>
<extracomment>window/fill_in</extracomment>
<translation>Alle Werte sind bekannt.</translation>
</message>
<message>
<source>No check and no figure waits for a number.</source>
<extracomment>window/fill_in</extracomment>
<translation>Keine Prüfung und keine Berechnung wartet auf einen Wert.</translation>
</message>
<message>
<source>No verdict rests on a usual value.</source>
<extracomment>window/fill_in</extracomment>
<translation>Kein Urteil beruht auf einem üblichen Wert.</translation>
</message>
<message>
<source>Nothing is drawn.</source>
<extracomment>window/fill_in</extracomment>
<translation>Es ist nichts gezeichnet.</translation>
</message>
<message>
<source>Enter answers and goes on, Shift+Enter goes back, ? says not known, Ctrl+V pastes a column or a table.</source>
<extracomment>window/fill_in</extracomment>
<translation>Eingabe bestätigt und geht weiter, Umschalt+Eingabe geht zurück, ? bedeutet nicht bekannt, Strg+V fügt eine Spalte oder Tabelle ein.</translation>
</message>
<message>
<source>Find</source>
<extracomment>window/fill_in</extracomment>
<translation>Suchen</translation>
</message>
<message>
<source>Find in what is to be filled in</source>
<extracomment>window/fill_in</extracomment>
<translation>Im Auszufüllenden suchen</translation>
</message>
<message>
<source>What to show</source>
<extracomment>window/fill_in</extracomment>
<translation>Was gezeigt wird</translation>
</message>
<message>
<source>Put in order</source>
<extracomment>window/fill_in</extracomment>
<translation>Ordnen</translation>
</message>
<message>
<source>Take away what is filled in and ask for the most needed first (F5)</source>
<extracomment>window/fill_in</extracomment>
<translation>Ausgefülltes wegnehmen und nach dem Nötigsten zuerst fragen (F5)</translation>
</message>
<message>
<source>What the row is, and what needs it</source>
<extracomment>window/fill_in</extracomment>
<translation>Was die Zeile bedeutet und was sie braucht</translation>
</message>
<message>
<source>Why it was refused</source>
<extracomment>window/fill_in</extracomment>
<translation>Warum der Wert abgelehnt wurde</translation>
</message>
<message>
<source>Nothing found.</source>
<extracomment>window/fill_in</extracomment>
<translation>Nichts gefunden.</translation>
</message>
<message>
<source>Not known</source>
<extracomment>window/fill_in</extracomment>
<translation>Nicht bekannt</translation>
</message>
<message>
<source>Usual: {usual}</source>
<extracomment>window/fill_in</extracomment>
<translation>Üblich: {usual}</translation>
</message>
<message>
<source>Show in the details</source>
<extracomment>window/fill_in</extracomment>
<translation>In den Einzelheiten zeigen</translation>
</message>
<message>
<source>Paste one column of values; rows copied from this table, or with its headings “key” and “value”; or a table with a row for each part or pipe and the fields’ names above it. {nothing}</source>
<extracomment>window/fill_in</extracomment>
<translation>Einfügen lässt sich eine Spalte von Werten; Zeilen, die aus dieser Tabelle kopiert sind, oder solche mit ihren Überschriften „key“ und „value“; oder eine Tabelle mit einer Zeile je Bauteil oder Rohr und den Namen der Felder darüber. {nothing}</translation>
</message>
<message>
<source>There is no text to paste.</source>
<extracomment>window/fill_in</extracomment>
<translation>Es ist kein Text zum Einfügen da.</translation>
</message>
<message>
<source>Fill in 1 value</source>
<extracomment>window/fill_in</extracomment>
<translation>1 Wert ausfüllen</translation>
</message>
<message>
<source>Fill in {count} values</source>
<extracomment>window/fill_in</extracomment>
<translation>{count} Werte ausfüllen</translation>
</message>
<message>
<source>{values} values do not fit into 1 row.</source>
<extracomment>window/fill_in</extracomment>
<translation>{values} Werte passen nicht in 1 Zeile.</translation>
</message>
<message>
<source>Nothing drawn has the key “{name}”.</source>
<extracomment>window/fill_in</extracomment>
<translation>Nichts Gezeichnetes hat den Schlüssel „{name}“.</translation>
</message>
<message>
<source>“{name}” is no field that can be filled in.</source>
<extracomment>window/fill_in</extracomment>
<translation>„{name}“ ist kein Feld, das ausgefüllt werden kann.</translation>
</message>
<message>
<source>pipe {id}</source>
<extracomment>window/fill_in</extracomment>
<translation>Rohr {id}</translation>
</message>
<message>
<source>Nothing drawn is called “{name}”.</source>
<extracomment>window/fill_in</extracomment>
<translation>Nichts Gezeichnetes heißt „{name}“.</translation>
</message>
<message>
<source>Several things are called “{name}”: name them by their ids.</source>
<extracomment>window/fill_in</extracomment>
<translation>Mehreres heißt „{name}“: Nennen Sie die Kennungen.</translation>
</message>
<message>
<source>“{name}” has no field “{field}”.</source>
<extracomment>window/fill_in</extracomment>
<translation>„{name}“ hat kein Feld „{field}“.</translation>
</message>
<message>
<source>{label} is told in {own}, and not in {unit}.</source>
<extracomment>window/fill_in</extracomment>
<translation>{label} wird in {own} angegeben und nicht in {unit}.</translation>
</message>
<message>
<source>{label} has no unit, and is not told in {unit}.</source>
<extracomment>window/fill_in</extracomment>
<translation>{label} hat keine Einheit und wird nicht in {unit} angegeben.</translation>
</message>
<message>
<source>What is not known, and what needs it</source>
<extracomment>window/fill_in</extracomment>
<translation>Was nicht bekannt ist und was es braucht</translation>
</message>
<message>
<source>{name}: what was found</source>
<extracomment>window</extracomment>
<translation>{name}: was gefunden wurde</translation>
</message>
<message>
<source>Find in the drawing</source>
<extracomment>window</extracomment>
<translation>In der Zeichnung suchen</translation>
</message>
<message>
<source>Nothing here is called that.</source>
<extracomment>window</extracomment>
<translation>Nichts hier heißt so.</translation>
</message>
<message>
<source>{index} of {count} called “{typed}”.  F3 next, Shift F3 back.</source>
<extracomment>window</extracomment>
<translation>{index} von {count} mit dem Namen „{typed}“.  F3 weiter, Umschalt+F3 zurück.</translation>
</message>
<message>
<source>Situation</source>
<extracomment>window</extracomment>
<translation>Betriebszustand</translation>
</message>
<message>
<source>What stands by the pipes</source>
<extracomment>window</extracomment>
<translation>Was an den Rohren steht</translation>
</message>
<message>
<source>Fill in</source>
<extracomment>window</extracomment>
<translation>Ausfüllen</translation>
</message>
<message>
<source>Fill in what is not known</source>
<extracomment>window</extracomment>
<translation>Ausfüllen, was nicht bekannt ist</translation>
</message>
<message>
<source>Hide the flows</source>
<extracomment>window</extracomment>
<translation>Volumenströme ausblenden</translation>
</message>
<message>
<source>Hide the flows (F9)</source>
<extracomment>window</extracomment>
<translation>Volumenströme ausblenden (F9)</translation>
</message>
<message>
<source>Flows</source>
<extracomment>window</extracomment>
<translation>Volumenströme</translation>
</message>
<message>
<source>Flows on the sheet</source>
<extracomment>window</extracomment>
<translation>Volumenströme auf dem Blatt</translation>
</message>
<message>
<source>Fill in: {sentence}</source>
<extracomment>window</extracomment>
<translation>Ausfüllen: {sentence}</translation>
</message>
<message>
<source>unsaved changes</source>
<extracomment>window</extracomment>
<translation>nicht gespeicherte Änderungen</translation>
</message>
<message>
<source>saved</source>
<extracomment>window</extracomment>
<translation>gespeichert</translation>
</message>
<message>
<source>{name}[*] – circuitcheck</source>
<extracomment>window</extracomment>
<translation>{name}[*] – circuitcheck</translation>
</message>
<message>
<source>judging…</source>
<extracomment>window</extracomment>
<translation>wird geprüft…</translation>
</message>
<message>
<source>Unsaved work is not kept safe: {reason}.</source>
<extracomment>window</extracomment>
<translation>Ungespeicherte Arbeit ist nicht gesichert: {reason}.</translation>
</message>
<message>
<source>PDF document</source>
<extracomment>window</extracomment>
<translation>PDF-Dokument</translation>
</message>
<message>
<source>HTML page</source>
<extracomment>window</extracomment>
<translation>HTML-Seite</translation>
</message>
<message>
<source>SVG drawing</source>
<extracomment>window</extracomment>
<translation>SVG-Zeichnung</translation>
</message>
<message>
<source>PNG picture</source>
<extracomment>window</extracomment>
<translation>PNG-Bild</translation>
</message>
<message>
<source>Table</source>
<extracomment>window</extracomment>
<translation>Tabelle</translation>
</message>
<message>
<source>PDF, the whole document to print and file</source>
<extracomment>window</extracomment>
<translation>PDF, das ganze Dokument zum Drucken und Ablegen</translation>
</message>
<message>
<source>HTML, the whole document as one page for a browser or a phone</source>
<extracomment>window</extracomment>
<translation>HTML, das ganze Dokument als eine Seite für Browser oder Telefon</translation>
</message>
<message>
<source>SVG, the drawing as line work</source>
<extracomment>window</extracomment>
<translation>SVG, die Zeichnung als Strichzeichnung</translation>
</message>
<message>
<source>PNG, the drawing as a picture</source>
<extracomment>window</extracomment>
<translation>PNG, die Zeichnung als Bild</translation>
</message>
<message>
<source>CSV, findings and parts list for a spreadsheet</source>
<extracomment>window</extracomment>
<translation>CSV, Befunde und Stückliste für eine Tabellenkalkulation</translation>
</message>
<message>
<source>Text upright, the drawing as it is larger</source>
<extracomment>window</extracomment>
<translation>Text im Hochformat, die Zeichnung, wie sie größer wird</translation>
</message>
<message>
<source>All pages upright</source>
<extracomment>window</extracomment>
<translation>Alle Seiten im Hochformat</translation>
</message>
<message>
<source>All pages lying</source>
<extracomment>window</extracomment>
<translation>Alle Seiten im Querformat</translation>
</message>
<message>
<source>Unanswered, not judged and what does not apply are told in it. A drawing without findings is not a certificate.</source>
<extracomment>window</extracomment>
<translation>Was offen blieb, nicht beurteilt wurde und nicht zutrifft, steht darin. Eine Zeichnung ohne Befunde ist keine Bescheinigung.</translation>
</message>
<message>
<source>Hand over</source>
<extracomment>window</extracomment>
<translation>Übergeben</translation>
</message>
<message>
<source>Kind of file</source>
<extracomment>window</extracomment>
<translation>Art der Datei</translation>
</message>
<message>
<source>Language of the document</source>
<extracomment>window</extracomment>
<translation>Sprache des Dokuments</translation>
</message>
<message>
<source>Paper</source>
<extracomment>window</extracomment>
<translation>Papier</translation>
</message>
<message>
<source>Pages</source>
<extracomment>window</extracomment>
<translation>Seiten</translation>
</message>
<message>
<source>&amp;Kind of file</source>
<extracomment>window</extracomment>
<translation>&amp;Art der Datei</translation>
</message>
<message>
<source>L&amp;anguage</source>
<extracomment>window</extracomment>
<translation>Sp&amp;rache</translation>
</message>
<message>
<source>&amp;Paper</source>
<extracomment>window</extracomment>
<translation>&amp;Papier</translation>
</message>
<message>
<source>Pa&amp;ges</source>
<extracomment>window</extracomment>
<translation>S&amp;eiten</translation>
</message>
<message>
<source>&amp;Save…</source>
<extracomment>window</extracomment>
<translation>&amp;Speichern…</translation>
</message>
<message>
<source>The document could not be made: it failed inside the program.</source>
<extracomment>window</extracomment>
<translation>Das Dokument konnte nicht erstellt werden: Es ist im Programm gescheitert.</translation>
</message>
<message>
<source>Save the whole as a document: PDF, HTML, SVG, PNG or a table</source>
<extracomment>window</extracomment>
<translation>Alles als Dokument speichern: PDF, HTML, SVG, PNG oder eine Tabelle</translation>
</message>
<message>
<source>&amp;Hand over…</source>
<extracomment>window</extracomment>
<translation>Über&amp;geben…</translation>
</message>
<message>
<source>&amp;Print the drawing…</source>
<extracomment>window</extracomment>
<translation>Zeichnung &amp;drucken…</translation>
</message>
<message>
<source>The drawing on paper</source>
<extracomment>window</extracomment>
<translation>Die Zeichnung auf Papier</translation>
</message>
<message>
<source>Making {file}…</source>
<extracomment>window</extracomment>
<translation>{file} wird erstellt…</translation>
</message>
<message>
<source>Printing…</source>
<extracomment>window</extracomment>
<translation>Es wird gedruckt…</translation>
</message>
<message>
<source>not saved yet</source>
<extracomment>window</extracomment>
<translation>noch nicht gespeichert</translation>
</message>
<message>
<source>Printed.</source>
<extracomment>window</extracomment>
<translation>Gedruckt.</translation>
</message>
<message>
<source>The printer did not take the page.</source>
<extracomment>window</extracomment>
<translation>Der Drucker hat die Seite nicht angenommen.</translation>
</message>
<message>
<source>{file} is written.</source>
<extracomment>window</extracomment>
<translation>{file} ist geschrieben.</translation>
</message>
<message>
<source>Search the lessons</source>
<extracomment>window/learning</extracomment>
<translation>Lektionen durchsuchen</translation>
</message>
<message>
<source>Lessons</source>
<extracomment>window/learning</extracomment>
<translation>Lektionen</translation>
</message>
<message>
<source>More checks: their text alone</source>
<extracomment>window/learning</extracomment>
<translation>Weitere Prüfungen: nur ihr Text</translation>
</message>
<message>
<source>{count} of {all} lessons read</source>
<extracomment>window/learning</extracomment>
<translation>{count} von {all} Lektionen gelesen</translation>
</message>
<message>
<source>{title}, read</source>
<extracomment>window/learning</extracomment>
<translation>{title}, gelesen</translation>
</message>
<message>
<source>&amp;Lessons…</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Lektionen…</translation>
</message>
<message>
<source>Each danger and fault on a small drawing to operate</source>
<extracomment>window/learning</extracomment>
<translation>Jede Gefahr und jeder Mangel an einer kleinen Zeichnung zum Bedienen</translation>
</message>
<message>
<source>Lessons – circuitcheck</source>
<extracomment>window/learning</extracomment>
<translation>Lektionen – circuitcheck</translation>
</message>
<message>
<source>&amp;Show what happens</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Zeigen, was geschieht</translation>
</message>
<message>
<source>&amp;Try the remedy</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Abhilfe ausprobieren</translation>
</message>
<message>
<source>&amp;Back to the fault</source>
<extracomment>window/learning</extracomment>
<translation>Zurück zum &amp;Mangel</translation>
</message>
<message>
<source>&amp;Previous</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Zurück</translation>
</message>
<message>
<source>&amp;Next</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Weiter</translation>
</message>
<message>
<source>Set the situation and the valves in which it is seen, and let time run</source>
<extracomment>window/learning</extracomment>
<translation>Den Betriebszustand und die Ventile so stellen, dass man es sieht, und die Zeit laufen lassen</translation>
</message>
<message>
<source>The same with the fault put right</source>
<extracomment>window/learning</extracomment>
<translation>Dasselbe, nachdem der Mangel behoben ist</translation>
</message>
<message>
<source>The drawing with the fault again, as the lesson began</source>
<extracomment>window/learning</extracomment>
<translation>Wieder die Zeichnung mit dem Mangel, wie die Lektion begann</translation>
</message>
<message>
<source>The lesson before (Alt+Left)</source>
<extracomment>window/learning</extracomment>
<translation>Die Lektion davor (Alt+Links)</translation>
</message>
<message>
<source>The lesson after (Alt+Right)</source>
<extracomment>window/learning</extracomment>
<translation>Die Lektion danach (Alt+Rechts)</translation>
</message>
<message>
<source>Its drawing is being made …</source>
<extracomment>window/learning</extracomment>
<translation>Die Zeichnung dazu wird erstellt …</translation>
</message>
<message>
<source>Remedied: {what}</source>
<extracomment>window/learning</extracomment>
<translation>Behoben: {what}</translation>
</message>
<message>
<source>What comes of it is being worked out …</source>
<extracomment>window/learning</extracomment>
<translation>Was daraus folgt, wird gerade berechnet …</translation>
</message>
<message>
<source>Its drawing could not be made; this is its text.</source>
<extracomment>window/learning</extracomment>
<translation>Die Zeichnung dazu konnte nicht erstellt werden; dies ist der Text.</translation>
</message>
<message>
<source>With the fault: {what}</source>
<extracomment>window/learning</extracomment>
<translation>Mit dem Mangel: {what}</translation>
</message>
<message>
<source>What happens is being worked out …</source>
<extracomment>window/learning</extracomment>
<translation>Was geschieht, wird ausgerechnet …</translation>
</message>
<message>
<source>The lesson’s sentences</source>
<extracomment>window/learning</extracomment>
<translation>Die Sätze der Lektion</translation>
</message>
<message>
<source>What it is</source>
<extracomment>window/learning</extracomment>
<translation>Worum es geht</translation>
</message>
<message>
<source>In this drawing</source>
<extracomment>window/learning</extracomment>
<translation>In dieser Zeichnung</translation>
</message>
<message>
<source>How such a slip happens</source>
<extracomment>window/learning</extracomment>
<translation>Wie ein solcher Fehler entsteht</translation>
</message>
<message>
<source>What comes of it here</source>
<extracomment>window/learning</extracomment>
<translation>Was hier daraus folgt</translation>
</message>
<message>
<source>Being worked out …</source>
<extracomment>window/learning</extracomment>
<translation>Wird berechnet …</translation>
</message>
<message>
<source>The remedy here</source>
<extracomment>window/learning</extracomment>
<translation>Die Abhilfe hier</translation>
</message>
<message>
<source>No flow, pressure or temperature shows this one. Why it matters stands below.</source>
<extracomment>window/learning</extracomment>
<translation>Diesen Fehler zeigt kein Volumenstrom, kein Druck und keine Temperatur. Warum er zählt, steht unten.</translation>
</message>
<message>
<source>Why it matters</source>
<extracomment>window/learning</extracomment>
<translation>Warum das wichtig ist</translation>
</message>
<message>
<source>What is written of it</source>
<extracomment>window/learning</extracomment>
<translation>Was darüber geschrieben steht</translation>
</message>
<message>
<source>Something is &amp;missing…</source>
<extracomment>window/learning</extracomment>
<translation>Es &amp;fehlt etwas…</translation>
</message>
<message>
<source>Say that something is nowhere in the drawing</source>
<extracomment>window/learning</extracomment>
<translation>Angeben, dass etwas nirgends in der Zeichnung ist</translation>
</message>
<message>
<source>Your marks</source>
<extracomment>window/learning</extracomment>
<translation>Ihre Markierungen</translation>
</message>
<message>
<source>&amp;Take back</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Zurücknehmen</translation>
</message>
<message>
<source>&amp;Show the answer</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Lösung zeigen</translation>
</message>
<message>
<source>&amp;Give up</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Aufgeben</translation>
</message>
<message>
<source>What is &amp;wrong here?</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Was ist hier falsch?</translation>
</message>
<message>
<source>{title}. Seed {seed}.</source>
<extracomment>window/learning</extracomment>
<translation>{title}. Startzahl {seed}.</translation>
</message>
<message>
<source>Choose what is wrong</source>
<extracomment>window/learning</extracomment>
<translation>Wählen, was falsch ist</translation>
</message>
<message>
<source>Press a part, a pipe or a control in the drawing. Of the drawing as a whole is written:</source>
<extracomment>window/learning</extracomment>
<translation>Drücken Sie auf ein Bauteil, ein Rohr oder einen Regler in der Zeichnung. Zur Zeichnung als Ganzem steht geschrieben:</translation>
</message>
<message>
<source>Say below what the drawing lacks.</source>
<extracomment>window/learning</extracomment>
<translation>Geben Sie unten an, was der Zeichnung fehlt.</translation>
</message>
<message>
<source>{number}  {place}: {reason}</source>
<extracomment>window/learning</extracomment>
<translation>{number}  {place}: {reason}</translation>
</message>
<message>
<source>None yet. A false accusation costs half a point.</source>
<extracomment>window/learning</extracomment>
<translation>Noch keine. Eine falsche Angabe kostet einen halben Punkt.</translation>
</message>
<message>
<source>Progress by check</source>
<extracomment>window/learning</extracomment>
<translation>Fortschritt nach Prüfungen</translation>
</message>
<message>
<source>Fault</source>
<extracomment>window/learning</extracomment>
<translation>Mangel</translation>
</message>
<message>
<source>Met</source>
<extracomment>window/learning</extracomment>
<translation>Gestellt</translation>
</message>
<message>
<source>Found</source>
<extracomment>window/learning</extracomment>
<translation>Gefunden</translation>
</message>
<message>
<source>Near</source>
<extracomment>window/learning</extracomment>
<translation>Beinahe</translation>
</message>
<message>
<source>False</source>
<extracomment>window/learning</extracomment>
<translation>Falsch</translation>
</message>
<message>
<source>What was put in, the least surely known first</source>
<extracomment>window/learning</extracomment>
<translation>Was eingebaut wurde, das am wenigsten sicher Gekonnte zuerst</translation>
</message>
<message>
<source>How often it was put in</source>
<extracomment>window/learning</extracomment>
<translation>Wie oft es eingebaut wurde</translation>
</message>
<message>
<source>Right part and right reason</source>
<extracomment>window/learning</extracomment>
<translation>Richtiges Bauteil und richtiger Grund</translation>
</message>
<message>
<source>Right part, another reason</source>
<extracomment>window/learning</extracomment>
<translation>Richtiges Bauteil, anderer Grund</translation>
</message>
<message>
<source>Said where it was not so</source>
<extracomment>window/learning</extracomment>
<translation>Angegeben, wo es nicht so war</translation>
</message>
<message>
<source>&amp;Back</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Zurück</translation>
</message>
<message>
<source>Export as &amp;CSV…</source>
<extracomment>window/learning</extracomment>
<translation>Als &amp;CSV ausgeben…</translation>
</message>
<message>
<source>Export as &amp;JSON…</source>
<extracomment>window/learning</extracomment>
<translation>Als &amp;JSON ausgeben…</translation>
</message>
<message>
<source>Progress</source>
<extracomment>window/learning</extracomment>
<translation>Fortschritt</translation>
</message>
<message>
<source>{count} exercise answered.</source>
<extracomment>window/learning</extracomment>
<translation>{count} Aufgabe gelöst.</translation>
</message>
<message>
<source>{count} exercises answered.</source>
<extracomment>window/learning</extracomment>
<translation>{count} Aufgaben gelöst.</translation>
</message>
<message>
<source>Kept on this machine only, in {path}.</source>
<extracomment>window/learning</extracomment>
<translation>Nur auf diesem Rechner aufgehoben, in {path}.</translation>
</message>
<message>
<source>Export the progress</source>
<extracomment>window/learning</extracomment>
<translation>Fortschritt ausgeben</translation>
</message>
<message>
<source>{name} was not written: {reason}</source>
<extracomment>window/learning</extracomment>
<translation>{name} wurde nicht geschrieben: {reason}</translation>
</message>
<message>
<source>Type to search the reasons</source>
<extracomment>window/learning</extracomment>
<translation>Tippen, um die Gründe zu durchsuchen</translation>
</message>
<message>
<source>Search the reasons</source>
<extracomment>window/learning</extracomment>
<translation>Gründe durchsuchen</translation>
</message>
<message>
<source>What can be wrong</source>
<extracomment>window/learning</extracomment>
<translation>Was falsch sein kann</translation>
</message>
<message>
<source>No reason says that.</source>
<extracomment>window/learning</extracomment>
<translation>Kein Grund lautet so.</translation>
</message>
<message>
<source>The faults and what came of them</source>
<extracomment>window/learning</extracomment>
<translation>Die Mängel und was aus ihnen wurde</translation>
</message>
<message>
<source>Explanation</source>
<extracomment>window/learning</extracomment>
<translation>Erklärung</translation>
</message>
<message>
<source>&amp;Next exercise</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Nächste Aufgabe</translation>
</message>
<message>
<source>The same &amp;again</source>
<extracomment>window/learning</extracomment>
<translation>Dieselbe noch &amp;einmal</translation>
</message>
<message>
<source>&amp;Choose…</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Auswählen…</translation>
</message>
<message>
<source>{outcome}: {reason}</source>
<extracomment>window/learning</extracomment>
<translation>{outcome}: {reason}</translation>
</message>
<message>
<source>Accused wrongly: {place}, {reason}</source>
<extracomment>window/learning</extracomment>
<translation>Zu Unrecht beanstandet: {place}, {reason}</translation>
</message>
<message>
<source>You said</source>
<extracomment>window/learning</extracomment>
<translation>Ihre Angabe</translation>
</message>
<message>
<source>What the checks say</source>
<extracomment>window/learning</extracomment>
<translation>Was die Prüfungen sagen</translation>
</message>
<message>
<source>How it happens</source>
<extracomment>window/learning</extracomment>
<translation>Wie es dazu kommt</translation>
</message>
<message>
<source>{place} is sound in this.</source>
<extracomment>window/learning</extracomment>
<translation>{place} ist in dieser Hinsicht in Ordnung.</translation>
</message>
<message>
<source>When one would say so</source>
<extracomment>window/learning</extracomment>
<translation>Wann man das angeben würde</translation>
</message>
<message>
<source>&amp;All</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Alle</translation>
</message>
<message>
<source>N&amp;one</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Keine</translation>
</message>
<message>
<source>Least &amp;known</source>
<extracomment>window/learning</extracomment>
<translation>Am &amp;wenigsten Gekonnte</translation>
</message>
<message>
<source>The kinds you have found least surely so far</source>
<extracomment>window/learning</extracomment>
<translation>Die Arten, die Sie bisher am wenigsten sicher gefunden haben</translation>
</message>
<message>
<source>How many faults</source>
<extracomment>window/learning</extracomment>
<translation>Wie viele Mängel</translation>
</message>
<message>
<source>Arrangement</source>
<extracomment>window/learning</extracomment>
<translation>Anordnung</translation>
</message>
<message>
<source>Any</source>
<extracomment>window/learning</extracomment>
<translation>Beliebig</translation>
</message>
<message>
<source>Surprise me</source>
<extracomment>window/learning</extracomment>
<translation>Überraschung</translation>
</message>
<message>
<source>Seed: the same number makes the same exercise; empty: surprise me</source>
<extracomment>window/learning</extracomment>
<translation>Startzahl: Dieselbe Zahl ergibt dieselbe Aufgabe; leer: Überraschung</translation>
</message>
<message>
<source>&amp;Begin</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Beginnen</translation>
</message>
<message>
<source>&amp;Progress…</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Fortschritt…</translation>
</message>
<message>
<source>Practice</source>
<extracomment>window/learning</extracomment>
<translation>Übung</translation>
</message>
<message>
<source>Faults are put into a sound drawing like this one. Find them, and say what is wrong.</source>
<extracomment>window/learning</extracomment>
<translation>In eine einwandfreie Zeichnung wie diese werden Mängel eingebaut. Finden Sie sie, und geben Sie an, was falsch ist.</translation>
</message>
<message>
<source>Kinds of fault</source>
<extracomment>window/learning</extracomment>
<translation>Arten von Mängeln</translation>
</message>
<message>
<source>&amp;Faults</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Mängel</translation>
</message>
<message>
<source>Ar&amp;rangement</source>
<extracomment>window/learning</extracomment>
<translation>A&amp;nordnung</translation>
</message>
<message>
<source>&amp;Seed</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Startzahl</translation>
</message>
<message>
<source>Making it…</source>
<extracomment>window/learning</extracomment>
<translation>Wird erstellt…</translation>
</message>
<message>
<source>{count} of {all} kinds chosen.</source>
<extracomment>window/learning</extracomment>
<translation>{count} von {all} Arten gewählt.</translation>
</message>
<message>
<source>Practice sheet</source>
<extracomment>window/learning</extracomment>
<translation>Übungsblatt</translation>
</message>
<message>
<source>The drawing to be judged. Tab and arrow keys go from thing to thing, Enter says that the one at hand is wrong.</source>
<extracomment>window/learning</extracomment>
<translation>Die Zeichnung, die zu beurteilen ist. Tabulator und Pfeiltasten gehen von Ding zu Ding, Eingabe gibt an, dass das gewählte falsch ist.</translation>
</message>
<message>
<source>At {name}.</source>
<extracomment>window/learning</extracomment>
<translation>An {name}.</translation>
</message>
<message>
<source>Practice – circuitcheck</source>
<extracomment>window/learning</extracomment>
<translation>Übung – circuitcheck</translation>
</message>
<message>
<source>No drawing takes {count} faults of these kinds. Choose more kinds, or fewer faults.</source>
<extracomment>window/learning</extracomment>
<translation>Keine Zeichnung nimmt {count} Mängel dieser Arten auf. Wählen Sie mehr Arten oder weniger Mängel.</translation>
</message>
<message>
<source>sound</source>
<extracomment>window/learning</extracomment>
<translation>einwandfrei</translation>
</message>
<message>
<source>Progress is not kept: {reason}</source>
<extracomment>window/learning</extracomment>
<translation>Der Fortschritt wird nicht aufgehoben: {reason}</translation>
</message>
<message>
<source>Circulation</source>
<extracomment>window/learning</extracomment>
<translation>Umlauf</translation>
</message>
<message>
<source>Discharge</source>
<extracomment>window/learning</extracomment>
<translation>Abblaseleitungen</translation>
</message>
<message>
<source>The drawing itself</source>
<extracomment>window/learning</extracomment>
<translation>Die Zeichnung selbst</translation>
</message>
<message>
<source>Heat source and its safety</source>
<extracomment>window/learning</extracomment>
<translation>Wärmeerzeuger und seine Absicherung</translation>
</message>
<message>
<source>Open-vented heating</source>
<extracomment>window/learning</extracomment>
<translation>Offene Heizung</translation>
</message>
<message>
<source>Hot-water store</source>
<extracomment>window/learning</extracomment>
<translation>Warmwasserspeicher</translation>
</message>
<message>
<source>Structure</source>
<extracomment>window/learning</extracomment>
<translation>Bauwerk</translation>
</message>
<message>
<source>Cold and hot supply</source>
<extracomment>window/learning</extracomment>
<translation>Kalt- und Warmwasserversorgung</translation>
</message>
<message>
<source>found</source>
<extracomment>window/learning</extracomment>
<translation>gefunden</translation>
</message>
<message>
<source>other reason</source>
<extracomment>window/learning</extracomment>
<translation>anderer Grund</translation>
</message>
<message>
<source>missed</source>
<extracomment>window/learning</extracomment>
<translation>übersehen</translation>
</message>
<message>
<source>Something is missing</source>
<extracomment>window/learning</extracomment>
<translation>Etwas fehlt</translation>
</message>
<message>
<source>Find the fault</source>
<extracomment>window/learning</extracomment>
<translation>Finden Sie den Mangel</translation>
</message>
<message>
<source>Find the {count} faults</source>
<extracomment>window/learning</extracomment>
<translation>Finden Sie die {count} Mängel</translation>
</message>
<message>
<source>{points} of {count} point</source>
<extracomment>window/learning</extracomment>
<translation>{points} von {count} Punkt</translation>
</message>
<message>
<source>{points} of {count} points</source>
<extracomment>window/learning</extracomment>
<translation>{points} von {count} Punkten</translation>
</message>
<message>
<source>{count} found</source>
<extracomment>window/learning</extracomment>
<translation>{count} gefunden</translation>
</message>
<message>
<source>{count} for another reason</source>
<extracomment>window/learning</extracomment>
<translation>{count} aus anderem Grund</translation>
</message>
<message>
<source>{count} missed</source>
<extracomment>window/learning</extracomment>
<translation>{count} übersehen</translation>
</message>
<message>
<source>{count} accused wrongly</source>
<extracomment>window/learning</extracomment>
<translation>{count} zu Unrecht beanstandet</translation>
</message>
<message>
<source>{all}.</source>
<extracomment>window/learning</extracomment>
<translation>{all}.</translation>
</message>
<message>
<source>Find faults that were put into sound drawings</source>
<extracomment>window/learning</extracomment>
<translation>Mängel finden, die in einwandfreie Zeichnungen eingebaut wurden</translation>
</message>
<message>
<source>&amp;Practice…</source>
<extracomment>window/learning</extracomment>
<translation>&amp;Übung…</translation>
</message>
<message>
<source>Working out the flows…</source>
<extracomment>window</extracomment>
<translation>Die Volumenströme werden ausgerechnet…</translation>
</message>
<message>
<source>The flows failed inside the program; none is shown.</source>
<extracomment>window</extracomment>
<translation>Die Volumenströme sind im Programm gescheitert; es werden keine gezeigt.</translation>
</message>
<message>
<source>Fi&amp;gures</source>
<extracomment>window</extracomment>
<translation>Be&amp;rechnungen</translation>
</message>
<message>
<source>Every figure worked out of the drawing, with its working</source>
<extracomment>window</extracomment>
<translation>Alles, was aus der Zeichnung berechnet wird, mit seinem Rechenweg</translation>
</message>
<message>
<source>Show the &amp;flows</source>
<extracomment>window</extracomment>
<translation>&amp;Volumenströme zeigen</translation>
</message>
<message>
<source>Which way water flows in each situation, and how fast</source>
<extracomment>window</extracomment>
<translation>Wohin das Wasser in jedem Betriebszustand fließt und wie schnell</translation>
</message>
<message>
<source>&amp;Next situation</source>
<extracomment>window</extracomment>
<translation>&amp;Nächster Betriebszustand</translation>
</message>
<message>
<source>Flows in the next situation</source>
<extracomment>window</extracomment>
<translation>Volumenströme im nächsten Betriebszustand</translation>
</message>
<message>
<source>F&amp;lows on the sheet</source>
<extracomment>window</extracomment>
<translation>V&amp;olumenströme auf dem Blatt</translation>
</message>
<message>
<source>By the pipes: {what}</source>
<extracomment>window</extracomment>
<translation>An den Rohren: {what}</translation>
</message>
<message>
<source>1 number is missing: some flows are not known.</source>
<extracomment>window</extracomment>
<translation>1 Angabe fehlt: Manche Volumenströme sind nicht bekannt.</translation>
</message>
<message>
<source>{count} numbers are missing: some flows are not known.</source>
<extracomment>window</extracomment>
<translation>{count} Angaben fehlen: Manche Volumenströme sind nicht bekannt.</translation>
</message>
<message>
<source>1 number is missing to work out the flows.</source>
<extracomment>window</extracomment>
<translation>1 Angabe fehlt, um die Volumenströme auszurechnen.</translation>
</message>
<message>
<source>{count} numbers are missing to work out the flows.</source>
<extracomment>window</extracomment>
<translation>{count} Angaben fehlen, um die Volumenströme auszurechnen.</translation>
</message>
<message>
<source>1 figure has no room: choose a pipe to read it.</source>
<extracomment>window</extracomment>
<translation>1 Wert hat keinen Platz: Wählen Sie ein Rohr, um ihn zu lesen.</translation>
</message>
<message>
<source>{count} figures have no room: choose a pipe to read it.</source>
<extracomment>window</extracomment>
<translation>{count} Werte haben keinen Platz: Wählen Sie ein Rohr, um sie zu lesen.</translation>
</message>
<message>
<source>&amp;File</source>
<extracomment>window</extracomment>
<translation>&amp;Datei</translation>
</message>
<message>
<source>&amp;Edit</source>
<extracomment>window</extracomment>
<translation>&amp;Bearbeiten</translation>
</message>
<message>
<source>&amp;View</source>
<extracomment>window</extracomment>
<translation>&amp;Ansicht</translation>
</message>
<message>
<source>&amp;Arrange</source>
<extracomment>window</extracomment>
<translation>An&amp;ordnen</translation>
</message>
<message>
<source>&amp;Window</source>
<extracomment>window</extracomment>
<translation>&amp;Fenster</translation>
</message>
<message>
<source>&amp;Review</source>
<extracomment>window</extracomment>
<translation>D&amp;urchsicht</translation>
</message>
<message>
<source>&amp;Learn</source>
<extracomment>window</extracomment>
<translation>&amp;Lernen</translation>
</message>
<message>
<source>&amp;Help</source>
<extracomment>window</extracomment>
<translation>&amp;Hilfe</translation>
</message>
<message>
<source>{name} is open in another window already.</source>
<extracomment>window</extracomment>
<translation>{name} ist schon in einem anderen Fenster geöffnet.</translation>
</message>
<message>
<source>{name} is open already: the program runs twice.</source>
<extracomment>window</extracomment>
<translation>{name} ist schon geöffnet: Das Programm läuft zweimal.</translation>
</message>
<message>
<source>Opened twice it can be changed in both. Whoever saves second is asked first: nothing that was saved is replaced unasked.</source>
<extracomment>window</extracomment>
<translation>Zweimal geöffnet, kann die Zeichnung in beiden geändert werden. Wer als Zweiter speichert, wird erst gefragt: Nichts Gespeichertes wird ungefragt ersetzt.</translation>
</message>
<message>
<source>Open it here too</source>
<extracomment>window</extracomment>
<translation>Auch hier öffnen</translation>
</message>
<message>
<source>Go to that window</source>
<extracomment>window</extracomment>
<translation>Zu jenem Fenster gehen</translation>
</message>
<message>
<source>Arrows only</source>
<extracomment>window/operating</extracomment>
<translation>Nur Pfeile</translation>
</message>
<message>
<source>Flow, l/min</source>
<extracomment>window/operating</extracomment>
<translation>Volumenstrom, l/min</translation>
</message>
<message>
<source>Velocity, m/s</source>
<extracomment>window/operating</extracomment>
<translation>Geschwindigkeit, m/s</translation>
</message>
<message>
<source>Pressure loss</source>
<extracomment>window/operating</extracomment>
<translation>Druckverlust</translation>
</message>
<message>
<source>Pressure, bar</source>
<extracomment>window/operating</extracomment>
<translation>Druck, bar</translation>
</message>
<message>
<source>Temperature, °C</source>
<extracomment>window/operating</extracomment>
<translation>Temperatur, °C</translation>
</message>
<message>
<source>Arrows move</source>
<extracomment>window/operating</extracomment>
<translation>Pfeile bewegen</translation>
</message>
<message>
<source>Let the arrows move along the pipes, or stand still</source>
<extracomment>window/operating</extracomment>
<translation>Die Pfeile an den Rohren entlanglaufen oder stillstehen lassen</translation>
</message>
<message>
<source>Leave operating</source>
<extracomment>window/operating</extracomment>
<translation>Betrieb verlassen</translation>
</message>
<message>
<source>Leave operating (Escape)</source>
<extracomment>window/operating</extracomment>
<translation>Betrieb verlassen (Esc)</translation>
</message>
<message>
<source>Operating</source>
<extracomment>window/operating</extracomment>
<translation>Im Betrieb</translation>
</message>
<message>
<source>Your own</source>
<extracomment>window/operating</extracomment>
<translation>Eigener</translation>
</message>
<message>
<source>lifts</source>
<extracomment>window/operating</extracomment>
<translation>spricht an</translation>
</message>
<message>
<source>cut out</source>
<extracomment>window/operating</extracomment>
<translation>abgeschaltet</translation>
</message>
<message>
<source>The course failed inside the program; none is shown.</source>
<extracomment>window/operating</extracomment>
<translation>Der Verlauf ist im Programm gescheitert; es wird keiner gezeigt.</translation>
</message>
<message>
<source>Nothing can be worked out in time: {why}.</source>
<extracomment>window/operating</extracomment>
<translation>Im zeitlichen Verlauf kann nichts ausgerechnet werden: {why}.</translation>
</message>
<message>
<source>Nothing can be worked out in time, since it is not known what flows.</source>
<extracomment>window/operating</extracomment>
<translation>Ein Verlauf lässt sich nicht berechnen, da nicht bekannt ist, was fließt.</translation>
</message>
<message>
<source>The chart needs one more number: {names}.</source>
<extracomment>window/operating</extracomment>
<translation>Dem Diagramm fehlt noch eine Angabe: {names}.</translation>
</message>
<message>
<source>The chart needs {count} more numbers: {names}.</source>
<extracomment>window/operating</extracomment>
<translation>Dem Diagramm fehlen noch {count} Angaben: {names}.</translation>
</message>
<message>
<source>safety valve {bar}</source>
<extracomment>window/operating</extracomment>
<translation>Sicherheitsventil {bar}</translation>
</message>
<message>
<source>plugged safety valve {bar}</source>
<extracomment>window/operating</extracomment>
<translation>Sicherheitsventil verschlossen, {bar}</translation>
</message>
<message>
<source>vessel’s charge {bar}</source>
<extracomment>window/operating</extracomment>
<translation>Vordruck des Gefäßes {bar}</translation>
</message>
<message>
<source>Each pipe and each part holds water of one temperature, which the solved flow carries on; pipes and stores lose no heat, and nothing circulates by warmth alone. Rooms stay as warm as they are set.</source>
<extracomment>window/operating</extracomment>
<translation>Jedes Rohr und jedes Bauteil enthält Wasser von einer einzigen Temperatur, das der berechnete Volumenstrom weiterträgt; Rohre und Speicher verlieren keine Wärme, und nichts läuft allein durch Schwerkraft um. Die Räume bleiben so warm, wie sie eingestellt sind.</translation>
</message>
<message>
<source>A heat source burns at its output until its flow is near the design’s, and heats by way of its own metal (0.5 kJ/K for each kW, 40 K above the water); its overheat cut-out, where one is stated, trips at 95 °C (common practice, no source). Controls do not turn anything by themselves; a pump’s run-on ends.</source>
<extracomment>window/operating</extracomment>
<translation>Ein Wärmeerzeuger brennt mit voller Leistung, bis sein Vorlauf nahe am Auslegungswert ist, und heizt über sein eigenes Metall (0,5 kJ/K je kW, 40 K über dem Wasser); sein Sicherheitstemperaturbegrenzer löst, wo einer angegeben ist, bei 95 °C aus (übliche Praxis, ohne Quelle). Regler verstellen von selbst nichts; der Nachlauf einer Pumpe endet.</translation>
</message>
<message>
<source>Vessels: Boyle’s law, the gas staying as cool as it was; the tube’s growth by warmth counts only where nothing else gives way. A safety valve holds its set pressure once it lifts: it needs up to a tenth more for its full lift, and reseats up to a fifth lower (EN ISO 4126-1, from memory). Pressures are the vessel’s, and at gauges and pipes also by height and pump.</source>
<extracomment>window/operating</extracomment>
<translation>Ausdehnungsgefäße: Gesetz von Boyle, das Gas bleibt so kühl, wie es war; die Wärmedehnung der Rohre zählt nur, wo sonst nichts nachgibt. Ein Sicherheitsventil hält seinen Ansprechdruck, sobald es öffnet: Für den vollen Hub braucht es bis zu ein Zehntel mehr, und es schließt bis zu ein Fünftel tiefer (EN ISO 4126-1, aus dem Gedächtnis). Die Drücke gelten am Ausdehnungsgefäß, an Manometern und Rohren auch nach Höhe und Pumpe.</translation>
</message>
<message>
<source>The design states {litres} l more water than the parts and pipes drawn hold: it stands with the emitters.</source>
<extracomment>window/operating</extracomment>
<translation>Die Auslegung nennt {litres} l mehr Wasser, als die gezeichneten Bauteile und Rohre enthalten: Es steht bei den Heizflächen.</translation>
</message>
<message>
<source>A blending valve on heating water lets its hot water through as it comes: what it mixes in is not worked out, and beyond it the water is cooler than shown.</source>
<extracomment>window/operating</extracomment>
<translation>Ein Mischventil im Heizwasser lässt sein heißes Wasser durch, wie es kommt: Was es beimischt, wird nicht berechnet, und dahinter ist das Wasser kühler als angezeigt.</translation>
</message>
<message>
<source>no gas</source>
<extracomment>window/operating</extracomment>
<translation>kein Gas</translation>
</message>
<message>
<source>{how}.</source>
<extracomment>window/operating</extracomment>
<translation>{how}.</translation>
</message>
<message>
<source>cut off from</source>
<extracomment>window/operating</extracomment>
<translation>abgesperrt von</translation>
</message>
<message>
<source>the expansion vessel</source>
<extracomment>window/operating</extracomment>
<translation>das Ausdehnungsgefäß</translation>
</message>
<message>
<source>the safety valve</source>
<extracomment>window/operating</extracomment>
<translation>das Sicherheitsventil</translation>
</message>
<message>
<source>the open vent</source>
<extracomment>window/operating</extracomment>
<translation>die offene Entlüftung</translation>
</message>
<message>
<source>the cold feed</source>
<extracomment>window/operating</extracomment>
<translation>die Speiseleitung</translation>
</message>
<message>
<source>the relief valve</source>
<extracomment>window/operating</extracomment>
<translation>das Abblaseventil</translation>
</message>
<message>
<source>and {device}</source>
<extracomment>window/operating</extracomment>
<translation>und {device}</translation>
</message>
<message>
<source>&amp;Operate</source>
<extracomment>window/operating</extracomment>
<translation>Betrei&amp;ben</translation>
</message>
<message>
<source>The drawing at work: turn its valves, see its water flow and warm</source>
<extracomment>window/operating</extracomment>
<translation>Die Zeichnung im Betrieb: Ventile drehen, das Wasser fließen und warm werden sehen</translation>
</message>
<message>
<source>Click a valve to turn it; Tab and Space do the same. The drawing is not changed. Escape leaves.</source>
<extracomment>window/operating</extracomment>
<translation>Klicken Sie auf ein Ventil, um es zu drehen; Tabulator und Leertaste tun dasselbe. Die Zeichnung ändert sich nicht. Esc verlässt den Betrieb.</translation>
</message>
<message>
<source>Play</source>
<extracomment>window/operating</extracomment>
<translation>Abspielen</translation>
</message>
<message>
<source>Let the time run (Space on the chart)</source>
<extracomment>window/operating</extracomment>
<translation>Die Zeit laufen lassen (Leertaste im Diagramm)</translation>
</message>
<message>
<source>Begin anew</source>
<extracomment>window/operating</extracomment>
<translation>Von vorn beginnen</translation>
</message>
<message>
<source>From the beginning: cold where heat is called, else hot</source>
<extracomment>window/operating</extracomment>
<translation>Von Anfang an: kalt, wo Wärme gefordert ist, sonst heiß</translation>
</message>
<message>
<source>How fast the time runs</source>
<extracomment>window/operating</extracomment>
<translation>Wie schnell die Zeit läuft</translation>
</message>
<message>
<source>{times} × time</source>
<extracomment>window/operating</extracomment>
<translation>{times}-fache Zeit</translation>
</message>
<message>
<source>Heat source whose water the chart shows</source>
<extracomment>window/operating</extracomment>
<translation>Wärmeerzeuger, dessen Wasser das Diagramm zeigt</translation>
</message>
<message>
<source>What this leaves out</source>
<extracomment>window/operating</extracomment>
<translation>Was hier weggelassen ist</translation>
</message>
<message>
<source>Pressure and temperature in time</source>
<extracomment>window/operating</extracomment>
<translation>Druck und Temperatur im zeitlichen Verlauf</translation>
</message>
<message>
<source>Pause</source>
<extracomment>window/operating</extracomment>
<translation>Anhalten</translation>
</message>
<message>
<source>pressure</source>
<extracomment>window/operating</extracomment>
<translation>Druck</translation>
</message>
<message>
<source>flow</source>
<extracomment>window/operating</extracomment>
<translation>Vorlauf</translation>
</message>
<message>
<source>return</source>
<extracomment>window/operating</extracomment>
<translation>Rücklauf</translation>
</message>
<message>
<source>Let out so far: {litres} l</source>
<extracomment>window/operating</extracomment>
<translation>Bisher abgeblasen: {litres} l</translation>
</message>
<message>
<source>at {time}</source>
<extracomment>window/operating</extracomment>
<translation>bei {time}</translation>
</message>
<message>
<source>flow {celsius}</source>
<extracomment>window/operating</extracomment>
<translation>Vorlauf {celsius}</translation>
</message>
<message>
<source>return {celsius}</source>
<extracomment>window/operating</extracomment>
<translation>Rücklauf {celsius}</translation>
</message>
<message>
<source>The safety valve lifts</source>
<extracomment>window/operating</extracomment>
<translation>Das Sicherheitsventil spricht an</translation>
</message>
<message>
<source>The overheat cut-out trips</source>
<extracomment>window/operating</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer löst aus</translation>
</message>
<message>
<source>The run-on is over: the pump stops</source>
<extracomment>window/operating</extracomment>
<translation>Der Nachlauf ist vorbei: Die Pumpe steht</translation>
</message>
<message>
<source>The store is as warm as its thermostat is set</source>
<extracomment>window/operating</extracomment>
<translation>Der Speicher ist so warm, wie sein Thermostat eingestellt ist</translation>
</message>
<message>
<source>The pressure passes what the heat source is made for</source>
<extracomment>window/operating</extracomment>
<translation>Der Druck übersteigt, wofür der Wärmeerzeuger gebaut ist</translation>
</message>
<message>
<source>The pressure is gone: the top can draw in air</source>
<extracomment>window/operating</extracomment>
<translation>Der Druck ist weg: Oben kann Luft angesaugt werden</translation>
</message>
<message>
<source>Hotter than the formulas reach: it is about to boil</source>
<extracomment>window/operating</extracomment>
<translation>Heißer, als die Formeln reichen: Es siedet gleich</translation>
</message>
<message>
<source>Past 100 bar: something has burst long before</source>
<extracomment>window/operating</extracomment>
<translation>Über 100 bar: Längst ist etwas geborsten</translation>
</message>
<message>
<source>{time} {what}</source>
<extracomment>window/operating</extracomment>
<translation>{time} {what}</translation>
</message>
<message>
<source>Sheet in operation</source>
<extracomment>window/operating</extracomment>
<translation>Blatt im Betrieb</translation>
</message>
<message>
<source>The drawing at work. Tab and arrow keys go from valve to valve, Space turns the one at hand, Escape leaves. The drawing itself is not changed here.</source>
<extracomment>window/operating</extracomment>
<translation>Die Zeichnung im Betrieb. Tabulator und Pfeiltasten gehen von Ventil zu Ventil, die Leertaste dreht das gewählte, Esc verlässt den Betrieb. Die Zeichnung selbst ändert sich hier nicht.</translation>
</message>
<message>
<source>Situations</source>
<extracomment>window/operating</extracomment>
<translation>Betriebszustände</translation>
</message>
<message>
<source>Valves and drives</source>
<extracomment>window/operating</extracomment>
<translation>Ventile und Antriebe</translation>
</message>
<message>
<source>as the valves were turned</source>
<extracomment>window/operating</extracomment>
<translation>wie die Ventile gedreht wurden</translation>
</message>
<message>
<source>Heating only</source>
<extracomment>window/operating</extracomment>
<translation>Nur Heizung</translation>
</message>
<message>
<source>Hot water only</source>
<extracomment>window/operating</extracomment>
<translation>Nur Warmwasser</translation>
</message>
<message>
<source>Heating and hot water</source>
<extracomment>window/operating</extracomment>
<translation>Heizung und Warmwasser</translation>
</message>
<message>
<source>Pump run-on</source>
<extracomment>window/operating</extracomment>
<translation>Pumpennachlauf</translation>
</message>
<message>
<source>At rest</source>
<extracomment>window/operating</extracomment>
<translation>In Ruhe</translation>
</message>
<message>
<source>Power off</source>
<extracomment>window/operating</extracomment>
<translation>Strom aus</translation>
</message>
<message>
<source>As drawn</source>
<extracomment>window/operating</extracomment>
<translation>Wie gezeichnet</translation>
</message>
<message>
<source>{valve} to {leg}</source>
<extracomment>window/operating</extracomment>
<translation>{valve} nach {leg}</translation>
</message>
<message>
<source>{part}: its valves</source>
<extracomment>window/operating</extracomment>
<translation>{part}: seine Ventile</translation>
</message>
<message>
<source>shut</source>
<extracomment>window/operating</extracomment>
<translation>zu</translation>
</message>
<message>
<source>open</source>
<extracomment>window/operating</extracomment>
<translation>offen</translation>
</message>
<message>
<source>with gas</source>
<extracomment>window/operating</extracomment>
<translation>mit Gas</translation>
</message>
<message>
<source>heats</source>
<extracomment>window/operating</extracomment>
<translation>heizt</translation>
</message>
<message>
<source>off</source>
<extracomment>window/operating</extracomment>
<translation>aus</translation>
</message>
<message>
<source>{part}: its pump</source>
<extracomment>window/operating</extracomment>
<translation>{part}: eigene Pumpe</translation>
</message>
<message>
<source>runs</source>
<extracomment>window/operating</extracomment>
<translation>läuft</translation>
</message>
<message>
<source>stands</source>
<extracomment>window/operating</extracomment>
<translation>steht</translation>
</message>
<message>
<source>{valves} shut</source>
<extracomment>window/operating</extracomment>
<translation>{valves} zu</translation>
</message>
<message>
<source>all motor valves open</source>
<extracomment>window/operating</extracomment>
<translation>alle Motorventile offen</translation>
</message>
<message>
<source>the pump of {part}</source>
<extracomment>window/operating</extracomment>
<translation>die Pumpe von {part}</translation>
</message>
<message>
<source>{pump} runs</source>
<extracomment>window/operating</extracomment>
<translation>{pump} läuft</translation>
</message>
<message>
<source>no pump runs</source>
<extracomment>window/operating</extracomment>
<translation>keine Pumpe läuft</translation>
</message>
<message>
<source>heat on</source>
<extracomment>window/operating</extracomment>
<translation>Wärme an</translation>
</message>
<message>
<source>heat off</source>
<extracomment>window/operating</extracomment>
<translation>Wärme aus</translation>
</message>
<message>
<source>its expansion vessel</source>
<extracomment>window/operating</extracomment>
<translation>seinem Ausdehnungsgefäß</translation>
</message>
<message>
<source>its safety valve</source>
<extracomment>window/operating</extracomment>
<translation>seinem Sicherheitsventil</translation>
</message>
<message>
<source>its open vent</source>
<extracomment>window/operating</extracomment>
<translation>seiner offenen Entlüftung</translation>
</message>
<message>
<source>its cold feed</source>
<extracomment>window/operating</extracomment>
<translation>seiner Speiseleitung</translation>
</message>
<message>
<source>its relief valve</source>
<extracomment>window/operating</extracomment>
<translation>seinem Abblaseventil</translation>
</message>
<message>
<source>{part} is cut off from {devices}.</source>
<extracomment>window/operating</extracomment>
<translation>{part} ist abgesperrt von {devices}.</translation>
</message>
<message>
<source>and</source>
<extracomment>window/operating</extracomment>
<translation>und</translation>
</message>
<message>
<source>{count} number is missing to work out the flows.</source>
<extracomment>window/operating</extracomment>
<translation>{count} Angabe fehlt, um die Volumenströme auszurechnen.</translation>
</message>
<message>
<source>Outline of the drawing</source>
<extracomment>window/outline</extracomment>
<translation>Gliederung der Zeichnung</translation>
</message>
<message>
<source>Arrow right opens a row, arrow left closes it. Enter goes on along a pipe, or opens a finding.</source>
<extracomment>window/outline</extracomment>
<translation>Pfeil rechts öffnet eine Zeile, Pfeil links schließt sie. Die Eingabetaste geht am Rohr entlang weiter oder öffnet einen Befund.</translation>
</message>
<message>
<source>Pipes</source>
<extracomment>window/outline</extracomment>
<translation>Rohre</translation>
</message>
<message>
<source>Findings</source>
<extracomment>window/outline</extracomment>
<translation>Befunde</translation>
</message>
<message>
<source>{group} ({count})</source>
<extracomment>window/outline</extracomment>
<translation>{group} ({count})</translation>
</message>
<message>
<source>{grade}: {finding}</source>
<extracomment>window/outline</extracomment>
<translation>{grade}: {finding}</translation>
</message>
<message>
<source>Acts on {part}</source>
<extracomment>window/outline</extracomment>
<translation>Wirkt auf {part}</translation>
</message>
<message>
<source>In one room with {part}</source>
<extracomment>window/outline</extracomment>
<translation>In einem Raum mit {part}</translation>
</message>
<message>
<source>free end</source>
<extracomment>window/outline</extracomment>
<translation>freies Ende</translation>
</message>
<message>
<source>{pipe}: {one} to {other}</source>
<extracomment>window/outline</extracomment>
<translation>{pipe}: {one} – {other}</translation>
</message>
<message>
<source>{name} ({kind})</source>
<extracomment>window/outline</extracomment>
<translation>{name} ({kind})</translation>
</message>
<message>
<source>Port {port}: no pipe</source>
<extracomment>window/outline</extracomment>
<translation>Anschluss {port}: kein Rohr</translation>
</message>
<message>
<source>{part}, port {port}</source>
<extracomment>window/outline</extracomment>
<translation>{part}, Anschluss {port}</translation>
</message>
<message>
<source>Port {port}: by {pipe} to {there}</source>
<extracomment>window/outline</extracomment>
<translation>Anschluss {port}: {pipe} zu {there}</translation>
</message>
<message>
<source>End on {part}, port {port}</source>
<extracomment>window/outline</extracomment>
<translation>Ende an {part}, Anschluss {port}</translation>
</message>
<message>
<source>Free end</source>
<extracomment>window/outline</extracomment>
<translation>Freies Ende</translation>
</message>
<message>
<source>Pipe</source>
<extracomment>window/outline</extracomment>
<translation>Rohr</translation>
</message>
<message>
<source>Out&amp;line</source>
<extracomment>window</extracomment>
<translation>&amp;Gliederung</translation>
</message>
<message>
<source>Every part, pipe and finding by its name, as a tree to walk along</source>
<extracomment>window</extracomment>
<translation>Jedes Bauteil, jedes Rohr und jeder Befund mit Namen, als Baum zum Entlanggehen</translation>
</message>
<message>
<source>{label}: why it was refused</source>
<extracomment>window/panels</extracomment>
<translation>{label}: warum der Wert abgelehnt wurde</translation>
</message>
<message>
<source>Details</source>
<extracomment>window/panels</extracomment>
<translation>Einzelheiten</translation>
</message>
<message>
<source>several</source>
<extracomment>window/panels</extracomment>
<translation>mehrere</translation>
</message>
<message>
<source>{value} (usual)</source>
<extracomment>window/panels</extracomment>
<translation>{value} (üblich)</translation>
</message>
<message>
<source>yes</source>
<extracomment>window/panels</extracomment>
<translation>ja</translation>
</message>
<message>
<source>no</source>
<extracomment>window/panels</extracomment>
<translation>nein</translation>
</message>
<message>
<source>none (usual)</source>
<extracomment>window/panels</extracomment>
<translation>keine (üblich)</translation>
</message>
<message>
<source>none, for certain</source>
<extracomment>window/panels</extracomment>
<translation>sicher keine</translation>
</message>
<message>
<source>none drawn yet</source>
<extracomment>window/panels</extracomment>
<translation>noch keine gezeichnet</translation>
</message>
<message>
<source>Open the lesson</source>
<extracomment>window/panels</extracomment>
<translation>Lektion öffnen</translation>
</message>
<message>
<source>This fault on a small drawing to operate, and its remedy</source>
<extracomment>window/panels</extracomment>
<translation>Dieser Mangel an einer kleinen Zeichnung zum Bedienen, und seine Abhilfe</translation>
</message>
<message>
<source>Accept this finding…</source>
<extracomment>window/panels</extracomment>
<translation>Diesen Befund hinnehmen…</translation>
</message>
<message>
<source>With a reason, a name and until when</source>
<extracomment>window/panels</extracomment>
<translation>Mit Grund, Namen und bis wann</translation>
</message>
<message>
<source>until {day}</source>
<extracomment>window/panels</extracomment>
<translation>bis {day}</translation>
</message>
<message>
<source>Accepted</source>
<extracomment>window/panels</extracomment>
<translation>Hingenommen</translation>
</message>
<message>
<source>no name</source>
<extracomment>window/panels</extracomment>
<translation>ohne Namen</translation>
</message>
<message>
<source>Take the acceptance back</source>
<extracomment>window/panels</extracomment>
<translation>Nicht länger hinnehmen</translation>
</message>
<message>
<source>Do it</source>
<extracomment>window/panels</extracomment>
<translation>Ausführen</translation>
</message>
<message>
<source>Do it: {cure}</source>
<extracomment>window/panels</extracomment>
<translation>Ausführen: {cure}</translation>
</message>
<message>
<source>Make this edit; Undo takes it back</source>
<extracomment>window/panels</extracomment>
<translation>Diese Änderung vornehmen; Rückgängig nimmt sie zurück</translation>
</message>
<message>
<source>Leave this finding</source>
<extracomment>window/panels</extracomment>
<translation>Diesen Befund verlassen</translation>
</message>
<message>
<source>Leave this finding (Escape)</source>
<extracomment>window/panels</extracomment>
<translation>Diesen Befund verlassen (Esc)</translation>
</message>
<message>
<source>Proved by shutting</source>
<extracomment>window/panels</extracomment>
<translation>Nachgewiesen durch Schließen von</translation>
</message>
<message>
<source>Operate this</source>
<extracomment>window/panels</extracomment>
<translation>Im Betrieb zeigen</translation>
</message>
<message>
<source>See the drawing at work with these valves shut (F7)</source>
<extracomment>window/panels</extracomment>
<translation>Die Zeichnung im Betrieb sehen, mit diesen Ventilen geschlossen (F7)</translation>
</message>
<message>
<source>{finding} (accepted)</source>
<extracomment>window/panels</extracomment>
<translation>{finding} (hingenommen)</translation>
</message>
<message>
<source>, accepted</source>
<extracomment>window/panels</extracomment>
<translation>, hingenommen</translation>
</message>
<message>
<source>1 check</source>
<extracomment>window/panels</extracomment>
<translation>1 Prüfung</translation>
</message>
<message>
<source>{count} checks</source>
<extracomment>window/panels</extracomment>
<translation>{count} Prüfungen</translation>
</message>
<message>
<source>{speaking} of {checks}</source>
<extracomment>window/panels</extracomment>
<translation>{speaking} von {checks}</translation>
</message>
<message>
<source>Nothing was changed.</source>
<extracomment>window/panels</extracomment>
<translation>Es wurde nichts geändert.</translation>
</message>
<message>
<source>It stays at the usual {value}.</source>
<extracomment>window/panels</extracomment>
<translation>Es bleibt beim üblichen Wert {value}.</translation>
</message>
<message>
<source>It stays not known.</source>
<extracomment>window/panels</extracomment>
<translation>Der Wert bleibt nicht bekannt.</translation>
</message>
<message>
<source>It stays at {value}.</source>
<extracomment>window/panels</extracomment>
<translation>Es bleibt bei {value}.</translation>
</message>
<message>
<source>“{text}” is not a number.</source>
<extracomment>window/panels</extracomment>
<translation>„{text}“ ist keine Zahl.</translation>
</message>
<message>
<source>{title}: fold or unfold</source>
<extracomment>window/panels</extracomment>
<translation>{title}: zu- oder aufklappen</translation>
</message>
<message>
<source>folded</source>
<extracomment>window/panels</extracomment>
<translation>zugeklappt</translation>
</message>
<message>
<source>unfolded</source>
<extracomment>window/panels</extracomment>
<translation>aufgeklappt</translation>
</message>
<message>
<source>Parts</source>
<extracomment>window/panels</extracomment>
<translation>Bauteile</translation>
</message>
<message>
<source>Find a part</source>
<extracomment>window/panels</extracomment>
<translation>Bauteil suchen</translation>
</message>
<message>
<source>Label</source>
<extracomment>window/panels</extracomment>
<translation>Bezeichnung</translation>
</message>
<message>
<source>Title</source>
<extracomment>window/panels</extracomment>
<translation>Titel</translation>
</message>
<message>
<source>Set</source>
<extracomment>window/panels</extracomment>
<translation>Sollwert</translation>
</message>
<message>
<source>Acts on</source>
<extracomment>window/panels</extracomment>
<translation>Wirkt auf</translation>
</message>
<message>
<source>In one room with</source>
<extracomment>window/panels</extracomment>
<translation>In einem Raum mit</translation>
</message>
<message>
<source>Drawing</source>
<extracomment>window/panels</extracomment>
<translation>Zeichnung</translation>
</message>
<message>
<source>{count} selected</source>
<extracomment>window/panels</extracomment>
<translation>{count} ausgewählt</translation>
</message>
<message>
<source>From {start} to {finish}.</source>
<extracomment>window/panels</extracomment>
<translation>Von {start} zu {finish}.</translation>
</message>
<message>
<source>These have no field in common.</source>
<extracomment>window/panels</extracomment>
<translation>Diese haben kein gemeinsames Feld.</translation>
</message>
<message>
<source>Rename {name}</source>
<extracomment>window/panels</extracomment>
<translation>{name} umbenennen</translation>
</message>
<message>
<source>Set title</source>
<extracomment>window/panels</extracomment>
<translation>Titel setzen</translation>
</message>
<message>
<source>Set scale</source>
<extracomment>window/panels</extracomment>
<translation>Maßstab setzen</translation>
</message>
<message>
<source>Not judged</source>
<extracomment>window/panels</extracomment>
<translation>Nicht beurteilt</translation>
</message>
<message>
<source>Usual values taken</source>
<extracomment>window/panels</extracomment>
<translation>Übliche Werte angenommen</translation>
</message>
<message>
<source>Does not apply</source>
<extracomment>window/panels</extracomment>
<translation>Trifft nicht zu</translation>
</message>
<message>
<source>Outline</source>
<extracomment>window</extracomment>
<translation>Gliederung</translation>
</message>
<message>
<source>How much</source>
<extracomment>window</extracomment>
<translation>Wie viel</translation>
</message>
<message>
<source>Size</source>
<extracomment>window</extracomment>
<translation>Größe</translation>
</message>
<message>
<source>Parts and pipe, counted</source>
<extracomment>window</extracomment>
<translation>Bauteile und Rohr, gezählt</translation>
</message>
<message>
<source>What the sums rest on</source>
<extracomment>window</extracomment>
<translation>Worauf die Summen beruhen</translation>
</message>
<message>
<source>&amp;Save as CSV…</source>
<extracomment>window</extracomment>
<translation>Als CSV &amp;speichern…</translation>
</message>
<message>
<source>Section</source>
<extracomment>window</extracomment>
<translation>Abschnitt</translation>
</message>
<message>
<source>Ids</source>
<extracomment>window</extracomment>
<translation>Kennungen</translation>
</message>
<message>
<source>{file} could not be saved: {reason}</source>
<extracomment>window</extracomment>
<translation>{file} konnte nicht gespeichert werden: {reason}</translation>
</message>
<message>
<source>1 bend</source>
<extracomment>window</extracomment>
<translation>1 Bogen</translation>
</message>
<message>
<source>{count} bends</source>
<extracomment>window</extracomment>
<translation>{count} Bögen</translation>
</message>
<message>
<source>Save the parts list</source>
<extracomment>window</extracomment>
<translation>Stückliste speichern</translation>
</message>
<message>
<source>Tables (*.csv)</source>
<extracomment>window</extracomment>
<translation>Tabellen (*.csv)</translation>
</message>
<message>
<source>A drawing was not saved when the program ended.</source>
<extracomment>window</extracomment>
<translation>Eine Zeichnung war nicht gespeichert, als das Programm endete.</translation>
</message>
<message>
<source>{count} drawings were not saved when the program ended.</source>
<extracomment>window</extracomment>
<translation>{count} Zeichnungen waren nicht gespeichert, als das Programm endete.</translation>
</message>
<message>
<source>Open it</source>
<extracomment>window</extracomment>
<translation>Öffnen</translation>
</message>
<message>
<source>Open them</source>
<extracomment>window</extracomment>
<translation>Öffnen</translation>
</message>
<message>
<source>Throw it away</source>
<extracomment>window</extracomment>
<translation>Verwerfen</translation>
</message>
<message>
<source>Throw them away</source>
<extracomment>window</extracomment>
<translation>Verwerfen</translation>
</message>
<message>
<source>Ask me later</source>
<extracomment>window</extracomment>
<translation>Später fragen</translation>
</message>
<message>
<source>A drawing without a title</source>
<extracomment>window</extracomment>
<translation>Eine Zeichnung ohne Titel</translation>
</message>
<message>
<source>of {path}</source>
<extracomment>window</extracomment>
<translation>von {path}</translation>
</message>
<message>
<source>never saved to a file</source>
<extracomment>window</extracomment>
<translation>nie in eine Datei gespeichert</translation>
</message>
<message>
<source>{name}, {where}, as of {when}</source>
<extracomment>window</extracomment>
<translation>{name}, {where}, Stand {when}</translation>
</message>
<message>
<source>Another window of the program has opened this drawing already.</source>
<extracomment>window</extracomment>
<translation>Ein anderes Fenster des Programms hat diese Zeichnung schon geöffnet.</translation>
</message>
<message>
<source>The drawing that was left cannot be read.</source>
<extracomment>window</extracomment>
<translation>Die übrig gebliebene Zeichnung kann nicht gelesen werden.</translation>
</message>
<message>
<source>What was left could not be thrown away.</source>
<extracomment>window</extracomment>
<translation>Was übrig geblieben ist, konnte nicht verworfen werden.</translation>
</message>
<message>
<source>It stays in {file}. {message}</source>
<extracomment>window</extracomment>
<translation>Sie bleibt in {file}. {message}</translation>
</message>
<message>
<source>This is a danger. Accepted it stays in every list and still counts: accepting says that somebody has seen it and why it stands, not that it is safe.</source>
<extracomment>window/review</extracomment>
<translation>Das ist eine Gefahr. Auch hingenommen bleibt sie in jeder Liste und zählt weiter: Hinnehmen besagt, dass jemand sie gesehen hat und warum sie stehen bleibt, nicht, dass sie ungefährlich ist.</translation>
</message>
<message>
<source>No finding of this drawing is accepted. A finding's card has a button for it.</source>
<extracomment>window/review</extracomment>
<translation>Kein Befund dieser Zeichnung ist hingenommen. Die Karte eines Befunds hat eine Schaltfläche dafür.</translation>
</message>
<message>
<source>Run out: the finding counts again</source>
<extracomment>window/review</extracomment>
<translation>Abgelaufen: Der Befund zählt wieder</translation>
</message>
<message>
<source>Nothing like it is found any more</source>
<extracomment>window/review</extracomment>
<translation>Nichts dergleichen wird mehr gefunden</translation>
</message>
<message>
<source>Accept a finding</source>
<extracomment>window/review</extracomment>
<translation>Einen Befund hinnehmen</translation>
</message>
<message>
<source>Why it may stand</source>
<extracomment>window/review</extracomment>
<translation>Warum er stehen bleiben darf</translation>
</message>
<message>
<source>Name</source>
<extracomment>window/review</extracomment>
<translation>Name</translation>
</message>
<message>
<source>Only until</source>
<extracomment>window/review</extracomment>
<translation>Nur bis</translation>
</message>
<message>
<source>Last day on which it holds</source>
<extracomment>window/review</extracomment>
<translation>Letzter Tag, an dem es gilt</translation>
</message>
<message>
<source>Reason</source>
<extracomment>window/review</extracomment>
<translation>Grund</translation>
</message>
<message>
<source>Accept the finding</source>
<extracomment>window/review</extracomment>
<translation>Befund hinnehmen</translation>
</message>
<message>
<source>Accepted findings</source>
<extracomment>window/review</extracomment>
<translation>Hingenommene Befunde</translation>
</message>
<message>
<source>On:</source>
<extracomment>window/review</extracomment>
<translation>An:</translation>
</message>
<message>
<source>No reason given</source>
<extracomment>window/review</extracomment>
<translation>Kein Grund angegeben</translation>
</message>
<message>
<source>Take it back</source>
<extracomment>window/review</extracomment>
<translation>Nicht länger hinnehmen</translation>
</message>
<message>
<source>Take it back: {name}</source>
<extracomment>window/review</extracomment>
<translation>Nicht länger hinnehmen: {name}</translation>
</message>
<message>
<source>Show</source>
<extracomment>window/review</extracomment>
<translation>Zeigen</translation>
</message>
<message>
<source>Show {name} on the sheet</source>
<extracomment>window/review</extracomment>
<translation>{name} auf dem Blatt zeigen</translation>
</message>
<message>
<source>, until {until}</source>
<extracomment>window/review</extracomment>
<translation>, bis {until}</translation>
</message>
<message>
<source>Choose an earlier file, and what was removed, fitted, moved and changed since is drawn on the sheet and listed here, with what to strip out and what to fit.</source>
<extracomment>window/review</extracomment>
<translation>Wählen Sie eine frühere Datei: Was seither entfernt, eingebaut, verschoben und geändert wurde, wird auf dem Blatt gezeichnet und hier aufgelistet, dazu, was auszubauen und was einzubauen ist.</translation>
</message>
<message>
<source>The two drawings hold the same.</source>
<extracomment>window/review</extracomment>
<translation>Die beiden Zeichnungen enthalten dasselbe.</translation>
</message>
<message>
<source>Compare with a file…</source>
<extracomment>window/review</extracomment>
<translation>Mit einer Datei vergleichen…</translation>
</message>
<message>
<source>Choose an earlier drawing</source>
<extracomment>window/review</extracomment>
<translation>Eine frühere Zeichnung wählen</translation>
</message>
<message>
<source>Stop comparing</source>
<extracomment>window/review</extracomment>
<translation>Vergleich beenden</translation>
</message>
<message>
<source>What differs</source>
<extracomment>window/review</extracomment>
<translation>Was sich unterscheidet</translation>
</message>
<message>
<source>From {name} to the drawing as it stands.</source>
<extracomment>window/review</extracomment>
<translation>Von {name} zur Zeichnung, wie sie jetzt ist.</translation>
</message>
<message>
<source>Removed</source>
<extracomment>window/review</extracomment>
<translation>Entfernt</translation>
</message>
<message>
<source>Fitted</source>
<extracomment>window/review</extracomment>
<translation>Eingebaut</translation>
</message>
<message>
<source>Re-piped</source>
<extracomment>window/review</extracomment>
<translation>Anders angeschlossen</translation>
</message>
<message>
<source>Changed</source>
<extracomment>window/review</extracomment>
<translation>Geändert</translation>
</message>
<message>
<source>Moved on the sheet</source>
<extracomment>window/review</extracomment>
<translation>Auf dem Blatt verschoben</translation>
</message>
<message>
<source>Called by another id</source>
<extracomment>window/review</extracomment>
<translation>Mit anderer Kennung</translation>
</message>
<message>
<source>{mine} is now {its}</source>
<extracomment>window/review</extracomment>
<translation>{mine} heißt jetzt {its}</translation>
</message>
<message>
<source>Said of the drawing</source>
<extracomment>window/review</extracomment>
<translation>Zur Zeichnung gesagt</translation>
</message>
<message>
<source>Strip out</source>
<extracomment>window/review</extracomment>
<translation>Ausbauen</translation>
</message>
<message>
<source>Fit</source>
<extracomment>window/review</extracomment>
<translation>Einbauen</translation>
</message>
<message>
<source>Pipe cut shorter or made longer</source>
<extracomment>window/review</extracomment>
<translation>Rohr gekürzt oder verlängert</translation>
</message>
<message>
<source>Being judged…</source>
<extracomment>window/review</extracomment>
<translation>Wird geprüft…</translation>
</message>
<message>
<source>Findings that went</source>
<extracomment>window/review</extracomment>
<translation>Befunde, die entfallen sind</translation>
</message>
<message>
<source>Findings that came</source>
<extracomment>window/review</extracomment>
<translation>Befunde, die hinzugekommen sind</translation>
</message>
<message>
<source>Findings that weigh otherwise</source>
<extracomment>window/review</extracomment>
<translation>Befunde, die anders wiegen</translation>
</message>
<message>
<source>{before}, now {now}: {message}</source>
<extracomment>window/review</extracomment>
<translation>{before}, jetzt {now}: {message}</translation>
</message>
<message>
<source>{metres} m of {item} {size}</source>
<extracomment>window/review</extracomment>
<translation>{metres} m {item} {size}</translation>
</message>
<message>
<source>not known: {what}</source>
<extracomment>window/review</extracomment>
<translation>nicht bekannt: {what}</translation>
</message>
<message>
<source>Compare with an earlier drawing</source>
<extracomment>window/review</extracomment>
<translation>Mit einer früheren Zeichnung vergleichen</translation>
</message>
<message>
<source>{file} cannot be read as a drawing.</source>
<extracomment>window/review</extracomment>
<translation>{file} kann nicht als Zeichnung gelesen werden.</translation>
</message>
<message>
<source>{file} cannot be read.</source>
<extracomment>window/review</extracomment>
<translation>{file} kann nicht gelesen werden.</translation>
</message>
<message>
<source>the drawing as it was reviewed</source>
<extracomment>window/review</extracomment>
<translation>die Zeichnung, wie sie durchgesehen wurde</translation>
</message>
<message>
<source>No note is pinned to this drawing.</source>
<extracomment>window/review</extracomment>
<translation>An diese Zeichnung ist keine Notiz geheftet.</translation>
</message>
<message>
<source>Notes</source>
<extracomment>window/review</extracomment>
<translation>Notizen</translation>
</message>
<message>
<source>Write a note</source>
<extracomment>window/review</extracomment>
<translation>Notiz schreiben</translation>
</message>
<message>
<source>Pin the note</source>
<extracomment>window/review</extracomment>
<translation>Notiz anheften</translation>
</message>
<message>
<source>Pin it to what is selected on the sheet</source>
<extracomment>window/review</extracomment>
<translation>An das heften, was auf dem Blatt ausgewählt ist</translation>
</message>
<message>
<source>{names} and {count} more</source>
<extracomment>window/review</extracomment>
<translation>{names} und {count} weitere</translation>
</message>
<message>
<source>On: the whole drawing. Select parts to pin it to them.</source>
<extracomment>window/review</extracomment>
<translation>An: die ganze Zeichnung. Wählen Sie Bauteile aus, um die Notiz daran zu heften.</translation>
</message>
<message>
<source>On: {names}</source>
<extracomment>window/review</extracomment>
<translation>An: {names}</translation>
</message>
<message>
<source>Note by {author}, {state}</source>
<extracomment>window/review</extracomment>
<translation>Notiz von {author}, {state}</translation>
</message>
<message>
<source>settled</source>
<extracomment>window/review</extracomment>
<translation>erledigt</translation>
</message>
<message>
<source>Answer</source>
<extracomment>window/review</extracomment>
<translation>Antworten</translation>
</message>
<message>
<source>Open</source>
<extracomment>window/review</extracomment>
<translation>Offen</translation>
</message>
<message>
<source>Settled</source>
<extracomment>window/review</extracomment>
<translation>Erledigt</translation>
</message>
<message>
<source>Answer the note: {text}</source>
<extracomment>window/review</extracomment>
<translation>Auf die Notiz antworten: {text}</translation>
</message>
<message>
<source>Settle</source>
<extracomment>window/review</extracomment>
<translation>Erledigen</translation>
</message>
<message>
<source>Open again</source>
<extracomment>window/review</extracomment>
<translation>Wieder öffnen</translation>
</message>
<message>
<source>Take out</source>
<extracomment>window/review</extracomment>
<translation>Entfernen</translation>
</message>
<message>
<source>Take out: {text}</source>
<extracomment>window/review</extracomment>
<translation>Entfernen: {text}</translation>
</message>
<message>
<source>On the whole drawing</source>
<extracomment>window/review</extracomment>
<translation>An der ganzen Zeichnung</translation>
</message>
<message>
<source>Your name, for what you say and sign</source>
<extracomment>window/review</extracomment>
<translation>Ihr Name, für alles, was Sie sagen und unterschreiben</translation>
</message>
<message>
<source>Your name</source>
<extracomment>window/review</extracomment>
<translation>Ihr Name</translation>
</message>
<message>
<source>Review</source>
<extracomment>window/review</extracomment>
<translation>Durchsicht</translation>
</message>
<message>
<source>&amp;Notes</source>
<extracomment>window/review</extracomment>
<translation>&amp;Notizen</translation>
</message>
<message>
<source>&amp;Accepted</source>
<extracomment>window/review</extracomment>
<translation>&amp;Hingenommen</translation>
</message>
<message>
<source>&amp;Compare</source>
<extracomment>window/review</extracomment>
<translation>&amp;Vergleich</translation>
</message>
<message>
<source>&amp;Record</source>
<extracomment>window/review</extracomment>
<translation>&amp;Protokoll</translation>
</message>
<message>
<source>accepted</source>
<extracomment>window/review</extracomment>
<translation>angenommen</translation>
</message>
<message>
<source>accepted with remarks</source>
<extracomment>window/review</extracomment>
<translation>angenommen mit Anmerkungen</translation>
</message>
<message>
<source>returned for changes</source>
<extracomment>window/review</extracomment>
<translation>zur Änderung zurückgegeben</translation>
</message>
<message>
<source>✓ Holds</source>
<extracomment>window/review</extracomment>
<translation>✓ Gilt</translation>
</message>
<message>
<source>✕ Broken</source>
<extracomment>window/review</extracomment>
<translation>✕ Gebrochen</translation>
</message>
<message>
<source>? Incomplete</source>
<extracomment>window/review</extracomment>
<translation>? Unvollständig</translation>
</message>
<message>
<source>No review record has been made of this drawing.</source>
<extracomment>window/review</extracomment>
<translation>Von dieser Zeichnung gibt es kein Prüfprotokoll.</translation>
</message>
<message>
<source>Review record</source>
<extracomment>window/review</extracomment>
<translation>Prüfprotokoll</translation>
</message>
<message>
<source>Your role, such as supervisor</source>
<extracomment>window/review</extracomment>
<translation>Ihre Funktion, etwa Meister</translation>
</message>
<message>
<source>Your role</source>
<extracomment>window/review</extracomment>
<translation>Ihre Funktion</translation>
</message>
<message>
<source>Decision</source>
<extracomment>window/review</extracomment>
<translation>Entscheidung</translation>
</message>
<message>
<source>Remarks</source>
<extracomment>window/review</extracomment>
<translation>Anmerkungen</translation>
</message>
<message>
<source>Make the review record</source>
<extracomment>window/review</extracomment>
<translation>Prüfprotokoll erstellen</translation>
</message>
<message>
<source>A record of the drawing as it stands now</source>
<extracomment>window/review</extracomment>
<translation>Ein Protokoll der Zeichnung, wie sie jetzt ist</translation>
</message>
<message>
<source>Make a record</source>
<extracomment>window/review</extracomment>
<translation>Protokoll erstellen</translation>
</message>
<message>
<source>What it covers</source>
<extracomment>window/review</extracomment>
<translation>Was es umfasst</translation>
</message>
<message>
<source>What it cannot prove</source>
<extracomment>window/review</extracomment>
<translation>Was es nicht beweisen kann</translation>
</message>
<message>
<source>The records failed to be held against the drawing inside the program.</source>
<extracomment>window/review</extracomment>
<translation>Der Vergleich der Protokolle mit der Zeichnung ist im Programm gescheitert.</translation>
</message>
<message>
<source>Show what changed</source>
<extracomment>window/review</extracomment>
<translation>Zeigen, was sich geändert hat</translation>
</message>
<message>
<source>The review record is broken by this change: Review, Record says why.</source>
<extracomment>window</extracomment>
<translation>Das Prüfprotokoll ist durch diese Änderung gebrochen: Durchsicht, Protokoll sagt, warum.</translation>
</message>
<message>
<source>review record</source>
<extracomment>window</extracomment>
<translation>Prüfprotokoll</translation>
</message>
<message>
<source>&amp;Review panel</source>
<extracomment>window</extracomment>
<translation>&amp;Durchsicht zeigen</translation>
</message>
<message>
<source>Notes, comparing, acceptances and the review record</source>
<extracomment>window</extracomment>
<translation>Notizen, Vergleich, hingenommene Befunde und das Prüfprotokoll</translation>
</message>
<message>
<source>Pin a &amp;note…</source>
<extracomment>window</extracomment>
<translation>&amp;Notiz anheften…</translation>
</message>
<message>
<source>A note on what is selected</source>
<extracomment>window</extracomment>
<translation>Eine Notiz zur Auswahl</translation>
</message>
<message>
<source>&amp;Compare with a file…</source>
<extracomment>window</extracomment>
<translation>Mit einer Datei &amp;vergleichen…</translation>
</message>
<message>
<source>What differs from an earlier drawing</source>
<extracomment>window</extracomment>
<translation>Was sich von einer früheren Zeichnung unterscheidet</translation>
</message>
<message>
<source>&amp;Stop comparing</source>
<extracomment>window</extracomment>
<translation>Vergleich &amp;beenden</translation>
</message>
<message>
<source>Leave the earlier drawing</source>
<extracomment>window</extracomment>
<translation>Die frühere Zeichnung verlassen</translation>
</message>
<message>
<source>&amp;Accept the finding…</source>
<extracomment>window</extracomment>
<translation>Befund &amp;hinnehmen…</translation>
</message>
<message>
<source>Accept the finding that is open</source>
<extracomment>window</extracomment>
<translation>Den geöffneten Befund hinnehmen</translation>
</message>
<message>
<source>Review &amp;record…</source>
<extracomment>window</extracomment>
<translation>&amp;Prüfprotokoll…</translation>
</message>
<message>
<source>Whether it holds, and to make one</source>
<extracomment>window</extracomment>
<translation>Ob es gilt, und um eines zu erstellen</translation>
</message>
<message>
<source>Give your name first: what is said and signed bears it.</source>
<extracomment>window</extracomment>
<translation>Geben Sie erst Ihren Namen an: Was gesagt und unterschrieben wird, trägt ihn.</translation>
</message>
<message>
<source>Pin note on {name}</source>
<extracomment>window</extracomment>
<translation>Notiz an {name} heften</translation>
</message>
<message>
<source>Pin note</source>
<extracomment>window</extracomment>
<translation>Notiz anheften</translation>
</message>
<message>
<source>Answer note</source>
<extracomment>window</extracomment>
<translation>Notiz beantworten</translation>
</message>
<message>
<source>Settle note</source>
<extracomment>window</extracomment>
<translation>Notiz erledigen</translation>
</message>
<message>
<source>Open note again</source>
<extracomment>window</extracomment>
<translation>Notiz wieder öffnen</translation>
</message>
<message>
<source>Take out note</source>
<extracomment>window</extracomment>
<translation>Notiz entfernen</translation>
</message>
<message>
<source>Accept finding</source>
<extracomment>window</extracomment>
<translation>Befund hinnehmen</translation>
</message>
<message>
<source>Take acceptance back</source>
<extracomment>window</extracomment>
<translation>Befund nicht länger hinnehmen</translation>
</message>
<message>
<source>Make review record</source>
<extracomment>window</extracomment>
<translation>Prüfprotokoll erstellen</translation>
</message>
<message>
<source>Nothing is selected.</source>
<extracomment>window/sheet</extracomment>
<translation>Es ist nichts ausgewählt.</translation>
</message>
<message>
<source>A pipe goes where its ends go: drag one of its runs, or move what it joins.</source>
<extracomment>window/sheet</extracomment>
<translation>Ein Rohr geht dorthin, wo seine Enden hingehen: Ziehen Sie eines seiner Stücke, oder verschieben Sie, was es verbindet.</translation>
</message>
<message>
<source>Move</source>
<extracomment>window/sheet</extracomment>
<translation>verschieben</translation>
</message>
<message>
<source>Turn</source>
<extracomment>window/sheet</extracomment>
<translation>drehen</translation>
</message>
<message>
<source>Mirror</source>
<extracomment>window/sheet</extracomment>
<translation>spiegeln</translation>
</message>
<message>
<source>Remove</source>
<extracomment>window/sheet</extracomment>
<translation>entfernen</translation>
</message>
<message>
<source>Align</source>
<extracomment>window/sheet</extracomment>
<translation>ausrichten</translation>
</message>
<message>
<source>Spread</source>
<extracomment>window/sheet</extracomment>
<translation>verteilen</translation>
</message>
<message>
<source>Route</source>
<extracomment>window/sheet</extracomment>
<translation>verlegen</translation>
</message>
<message>
<source>Duplicate</source>
<extracomment>window/sheet</extracomment>
<translation>verdoppeln</translation>
</message>
<message>
<source>Paste</source>
<extracomment>window/sheet</extracomment>
<translation>einfügen</translation>
</message>
<message>
<source>Type a part’s name to place it.  Press on a port and drag to draw a pipe.</source>
<extracomment>window/sheet</extracomment>
<translation>Tippen Sie den Namen eines Bauteils, um es zu platzieren.  Drücken Sie auf einen Anschluss und ziehen Sie, um ein Rohr zu zeichnen.</translation>
</message>
<message>
<source>{count} chosen.  R turns them, M mirrors them, arrow keys move them; Ctrl C copies them.</source>
<extracomment>window/sheet</extracomment>
<translation>{count} gewählt.  R dreht sie, M spiegelt sie, Pfeiltasten verschieben sie; Strg+C kopiert sie.</translation>
</message>
<message>
<source>Pipe chosen.  Drag a run to shape it, Delete takes it out.</source>
<extracomment>window/sheet</extracomment>
<translation>Rohr gewählt.  Ziehen Sie ein Stück, um es zu formen; Entf nimmt es heraus.</translation>
</message>
<message>
<source>{title} chosen.  R turns it, M mirrors it, arrow keys move it by one square.</source>
<extracomment>window/sheet</extracomment>
<translation>{title} gewählt.  R dreht, M spiegelt, Pfeiltasten verschieben um ein Feld.</translation>
</message>
<message>
<source>Turn round</source>
<extracomment>window/sheet</extracomment>
<translation>umdrehen</translation>
</message>
<message>
<source>Shape pipe</source>
<extracomment>window/sheet</extracomment>
<translation>Rohr formen</translation>
</message>
<message>
<source>Drawing without a name</source>
<extracomment>window/sheet</extracomment>
<translation>Zeichnung ohne Namen</translation>
</message>
<message>
<source>Enter places it here, Shift Enter one more after it; Tab takes it in hand to turn or move it.  Up and down choose another, Escape leaves.</source>
<extracomment>window/sheet</extracomment>
<translation>Eingabe platziert es hier, Umschalt+Eingabe danach noch eines; Tabulator nimmt es zur Hand, um es zu drehen oder zu verschieben.  Auf und Ab wählen ein anderes, Esc verlässt die Suche.</translation>
</message>
<message>
<source>Find a part to place</source>
<extracomment>window/sheet</extracomment>
<translation>Ein Bauteil zum Platzieren suchen</translation>
</message>
<message>
<source>No part is called that or does that.</source>
<extracomment>window/sheet</extracomment>
<translation>Kein Bauteil heißt so oder tut das.</translation>
</message>
<message>
<source>Release on a port, on a pipe to make a tee, or in the open. Escape leaves the drawing as it is.</source>
<extracomment>window/sheet</extracomment>
<translation>Lassen Sie auf einem Anschluss los, auf einem Rohr, um ein T-Stück zu setzen, oder im Freien. Esc lässt die Zeichnung, wie sie ist.</translation>
</message>
<message>
<source>Draw pipe</source>
<extracomment>window/sheet</extracomment>
<translation>Rohr zeichnen</translation>
</message>
<message>
<source>Join pipe</source>
<extracomment>window/sheet</extracomment>
<translation>Rohr anschließen</translation>
</message>
<message>
<source>Cut in</source>
<extracomment>window/sheet</extracomment>
<translation>einsetzen</translation>
</message>
<message>
<source>Cut in {what}</source>
<extracomment>window/sheet</extracomment>
<translation>{what} einsetzen</translation>
</message>
<message>
<source>Place {what}</source>
<extracomment>window/sheet</extracomment>
<translation>{what} platzieren</translation>
</message>
<message>
<source>Click to place the {part}, on a pipe to cut it in.  R turns it, M mirrors it, Shift places one more, Escape puts it away.</source>
<extracomment>window/sheet</extracomment>
<translation>Klicken Sie, um das Bauteil zu platzieren ({part}), auf ein Rohr, um es einzusetzen.  R dreht, M spiegelt, Umschalt platziert noch eines, Esc legt es weg.</translation>
</message>
<message>
<source>Place the heat source first</source>
<extracomment>window/sheet</extracomment>
<translation>Platzieren Sie zuerst den Wärmeerzeuger</translation>
</message>
<message>
<source>Press Enter, type the name of any part, or drag it from the parts</source>
<extracomment>window/sheet</extracomment>
<translation>Drücken Sie Eingabe, tippen Sie den Namen eines Bauteils, oder ziehen Sie es aus den Bauteilen</translation>
</message>
<message>
<source>Place heat source</source>
<extracomment>window/sheet</extracomment>
<translation>Wärmeerzeuger platzieren</translation>
</message>
<message>
<source>Start from an arrangement</source>
<extracomment>window/sheet</extracomment>
<translation>Von einer Anordnung ausgehen</translation>
</message>
<message>
<source>Take the tour</source>
<extracomment>window/sheet</extracomment>
<translation>Rundgang beginnen</translation>
</message>
<message>
<source>A pipe begins at a port that has none: choose a part, or put the caret on a port.</source>
<extracomment>window/sheet</extracomment>
<translation>Ein Rohr beginnt an einem Anschluss, der keines hat: Wählen Sie ein Bauteil, oder setzen Sie die Schreibmarke auf einen Anschluss.</translation>
</message>
<message>
<source>From {start}.  Tab goes from port to port, P begins at the next one, Enter ends the pipe, Escape leaves it.</source>
<extracomment>window/sheet</extracomment>
<translation>Von {start}.  Tabulator geht von Anschluss zu Anschluss, P beginnt am nächsten, Eingabe beendet das Rohr, Esc verlässt es.</translation>
</message>
<message>
<source>the free end</source>
<extracomment>window/sheet</extracomment>
<translation>dem freien Ende</translation>
</message>
<message>
<source>port {port}</source>
<extracomment>window/sheet</extracomment>
<translation>Anschluss {port}</translation>
</message>
<message>
<source>The drawing is being laid out…</source>
<extracomment>window/sheet</extracomment>
<translation>Die Zeichnung wird aufgebaut …</translation>
</message>
<message>
<source>{verb} {what}</source>
<extracomment>window/sheet</extracomment>
<translation>{what} {verb}</translation>
</message>
<message>
<source>pipe</source>
<extracomment>window/sheet</extracomment>
<translation>Rohr</translation>
</message>
<message>
<source>Sheet</source>
<extracomment>window/sheet</extracomment>
<translation>Blatt</translation>
</message>
<message>
<source>The drawing. Letters find a part to place. Tab walks through the parts, Ctrl and an arrow goes to the next one that way, arrow keys move what is chosen, P begins a pipe and Tab takes it from port to port, Enter places or ends.</source>
<extracomment>window/sheet</extracomment>
<translation>Die Zeichnung. Buchstaben suchen ein Bauteil zum Platzieren. Tabulator geht durch die Bauteile, Strg und ein Pfeil geht zum nächsten in dieser Richtung, Pfeiltasten verschieben die Auswahl, P beginnt ein Rohr, und Tabulator führt es von Anschluss zu Anschluss, Eingabe platziert oder beendet.</translation>
</message>
<message>
<source>From nothing</source>
<extracomment>window/start</extracomment>
<translation>Von Grund auf</translation>
</message>
<message>
<source>Empty sheet</source>
<extracomment>window/start</extracomment>
<translation>Leeres Blatt</translation>
</message>
<message>
<source>Begin with the heat source, and draw from port to port.</source>
<extracomment>window/start</extracomment>
<translation>Beginnen Sie mit dem Wärmeerzeuger, und zeichnen Sie von Anschluss zu Anschluss.</translation>
</message>
<message>
<source>Begin empty</source>
<extracomment>window/start</extracomment>
<translation>Leer beginnen</translation>
</message>
<message>
<source>{group}, sound</source>
<extracomment>window/start</extracomment>
<translation>{group}</translation>
</message>
<message>
<source>Start from this</source>
<extracomment>window/start</extracomment>
<translation>Hiervon ausgehen</translation>
</message>
<message>
<source>Samples to look at</source>
<extracomment>window/start</extracomment>
<translation>Beispiele zum Ansehen</translation>
</message>
<message>
<source>Opened as a copy. Nothing you do changes the sample.</source>
<extracomment>window/start</extracomment>
<translation>Als Kopie geöffnet. Nichts, was Sie tun, ändert das Beispiel.</translation>
</message>
<message>
<source>Open a copy</source>
<extracomment>window/start</extracomment>
<translation>Kopie öffnen</translation>
</message>
<message>
<source>Begin a drawing</source>
<extracomment>window/start</extracomment>
<translation>Eine Zeichnung beginnen</translation>
</message>
<message>
<source>Picture of the drawing</source>
<extracomment>window/start</extracomment>
<translation>Bild der Zeichnung</translation>
</message>
<message>
<source>What to begin with</source>
<extracomment>window/start</extracomment>
<translation>Womit begonnen wird</translation>
</message>
<message>
<source>What would you like to draw?</source>
<extracomment>window/start</extracomment>
<translation>Was möchten Sie zeichnen?</translation>
</message>
<message>
<source>Arrows choose, Enter begins. Escape shows the empty sheet.</source>
<extracomment>window/start</extracomment>
<translation>Pfeiltasten wählen, Eingabe beginnt. Esc zeigt das leere Blatt.</translation>
</message>
<message>
<source>Open a drawing…</source>
<extracomment>window/start</extracomment>
<translation>Eine Zeichnung öffnen…</translation>
</message>
<message>
<source>One fault and its cure, in two minutes</source>
<extracomment>window/start</extracomment>
<translation>Ein Mangel und seine Abhilfe, in zwei Minuten</translation>
</message>
<message>
<source>Open {name}</source>
<extracomment>window/start</extracomment>
<translation>{name} öffnen</translation>
</message>
<message>
<source>New from an &amp;arrangement…</source>
<extracomment>window/start</extracomment>
<translation>Neu aus einer &amp;Anordnung…</translation>
</message>
<message>
<source>Begin with a sound arrangement, a sample or an empty sheet</source>
<extracomment>window/start</extracomment>
<translation>Mit einer einwandfreien Anordnung, einem Beispiel oder einem leeren Blatt beginnen</translation>
</message>
<message>
<source>&amp;Tour: one fault and its cure</source>
<extracomment>window/start</extracomment>
<translation>&amp;Rundgang: ein Mangel und seine Abhilfe</translation>
</message>
<message>
<source>Two minutes on a drawing of its own</source>
<extracomment>window/start</extracomment>
<translation>Zwei Minuten an einer eigenen Zeichnung</translation>
</message>
<message>
<source>A drawing with one fault</source>
<extracomment>window/start</extracomment>
<translation>Eine Zeichnung mit einem Mangel</translation>
</message>
<message>
<source>Someone fitted a valve between the heat source and its expansion vessel. The program judged the drawing as it was opened; the bar counts what it found, the heaviest first.</source>
<extracomment>window/start</extracomment>
<translation>Jemand hat ein Ventil zwischen den Wärmeerzeuger und sein Ausdehnungsgefäß gebaut. Das Programm hat die Zeichnung beim Öffnen beurteilt; die Leiste zählt, was es gefunden hat, das Schwerste zuerst.</translation>
</message>
<message>
<source>Next</source>
<extracomment>window/start</extracomment>
<translation>Weiter</translation>
</message>
<message>
<source>Choose the finding</source>
<extracomment>window/start</extracomment>
<translation>Den Befund wählen</translation>
</message>
<message>
<source>Click it in the list, or press the button below. By keys: F8.</source>
<extracomment>window/start</extracomment>
<translation>Klicken Sie ihn in der Liste an, oder drücken Sie die Schaltfläche unten. Mit Tasten: F8.</translation>
</message>
<message>
<source>Choose it</source>
<extracomment>window/start</extracomment>
<translation>Wählen</translation>
</message>
<message>
<source>The proof stands on the drawing</source>
<extracomment>window/start</extracomment>
<translation>Der Nachweis steht auf der Zeichnung</translation>
</message>
<message>
<source>With the valves that are shown shut, what is tinted is cut off from the vessel. Water that is heated there has nowhere to swell. Every position the valves can take was tried.</source>
<extracomment>window/start</extracomment>
<translation>Sind die als geschlossen gezeigten Ventile zu, so ist das Gefärbte vom Ausdehnungsgefäß abgesperrt. Wasser, das dort erwärmt wird, kann sich nirgends ausdehnen. Jede Stellung, die die Ventile einnehmen können, wurde durchprobiert.</translation>
</message>
<message>
<source>Why, and what puts it right</source>
<extracomment>window/start</extracomment>
<translation>Warum, und was abhilft</translation>
</message>
<message>
<source>The card says why it matters, what puts it right, and from which source. Each cure it offers was tried first on the whole drawing. Press one, or the button below.</source>
<extracomment>window/start</extracomment>
<translation>Die Karte sagt, warum es wichtig ist, was abhilft und aus welcher Quelle das stammt. Jede angebotene Abhilfe wurde zuvor an der ganzen Zeichnung erprobt. Drücken Sie eine davon oder die Schaltfläche unten.</translation>
</message>
<message>
<source>Take the first cure</source>
<extracomment>window/start</extracomment>
<translation>Erste Abhilfe nehmen</translation>
</message>
<message>
<source>Sound again, in one step</source>
<extracomment>window/start</extracomment>
<translation>In einem Schritt wieder einwandfrei</translation>
</message>
<message>
<source>Undo would bring the fault back. The list below now says what was judged, what was not, and which usual values were taken: silence is never approval.</source>
<extracomment>window/start</extracomment>
<translation>Rückgängig brächte den Mangel zurück. Die Liste unten sagt nun, was beurteilt wurde, was nicht und welche üblichen Werte angenommen wurden: Schweigen ist nie Zustimmung.</translation>
</message>
<message>
<source>Where to go on</source>
<extracomment>window/start</extracomment>
<translation>Wie es weitergeht</translation>
</message>
<message>
<source>Operate shows the water flow and lets you shut any valve. Figures shows each size with its working. Hand over writes the document that another person can check. This drawing is a copy: change what you like.</source>
<extracomment>window/start</extracomment>
<translation>Betreiben zeigt das Wasser fließen und lässt Sie jedes Ventil schließen. Berechnungen zeigt jede Größe mit ihrem Rechenweg. Übergeben schreibt das Dokument, das ein anderer prüfen kann. Diese Zeichnung ist eine Kopie: Ändern Sie, was Sie möchten.</translation>
</message>
<message>
<source>Done</source>
<extracomment>window/start</extracomment>
<translation>Fertig</translation>
</message>
<message>
<source>Leave the tour</source>
<extracomment>window/start</extracomment>
<translation>Rundgang verlassen</translation>
</message>
<message>
<source>Step {at} of {of}</source>
<extracomment>window/start</extracomment>
<translation>Schritt {at} von {of}</translation>
</message>
<message>
<source>Zoom out</source>
<extracomment>window</extracomment>
<translation>Verkleinern</translation>
</message>
<message>
<source>Zoom</source>
<extracomment>window</extracomment>
<translation>Vergrößerung</translation>
</message>
<message>
<source>Zoom in</source>
<extracomment>window</extracomment>
<translation>Vergrößern</translation>
</message>
<message>
<source>Zoom {factor:.0f} percent; press for 100</source>
<extracomment>window</extracomment>
<translation>Vergrößerung {factor:.0f} Prozent; drücken für 100</translation>
</message>
<message>
<source>&amp;Fill in what is not known</source>
<extracomment>window</extracomment>
<translation>Aus&amp;füllen, was nicht bekannt ist</translation>
</message>
<message>
<source>One table of what is not known, the most needed first</source>
<extracomment>window</extracomment>
<translation>Eine Tabelle dessen, was nicht bekannt ist, das Nötigste zuerst</translation>
</message>
<message>
<source>Parts and &amp;pipe, counted…</source>
<extracomment>window</extracomment>
<translation>Bauteile &amp;und Rohr, gezählt…</translation>
</message>
<message>
<source>How many of each part, and pipe by size, to copy or save as a table</source>
<extracomment>window</extracomment>
<translation>Wie viele von jedem Bauteil, und Rohr nach Größe, zum Kopieren oder Speichern als Tabelle</translation>
</message>
<message>
<source>put it right</source>
<extracomment>window</extracomment>
<translation>Befund beheben</translation>
</message>
<message>
<source>Finding {index} of {count}.  F8 next, Shift F8 back, Escape leaves it.</source>
<extracomment>window</extracomment>
<translation>Befund {index} von {count}.  F8 weiter, Umschalt+F8 zurück, Esc verlässt ihn.</translation>
</message>
<message>
<source>As the system</source>
<extracomment>window</extracomment>
<translation>Wie das System</translation>
</message>
<message>
<source>Light</source>
<extracomment>window</extracomment>
<translation>Hell</translation>
</message>
<message>
<source>Dark</source>
<extracomment>window</extracomment>
<translation>Dunkel</translation>
</message>
<message>
<source>High contrast, light</source>
<extracomment>window</extracomment>
<translation>Hoher Kontrast, hell</translation>
</message>
<message>
<source>High contrast, dark</source>
<extracomment>window</extracomment>
<translation>Hoher Kontrast, dunkel</translation>
</message>
<message>
<source>Needed by checks and figures</source>
<extracomment>window</extracomment>
<translation>Von Prüfungen und Berechnungen gebraucht</translation>
</message>
<message>
<source>Usual values verdicts rest on</source>
<extracomment>window</extracomment>
<translation>Übliche Werte, auf denen Urteile beruhen</translation>
</message>
<message>
<source>Everything</source>
<extracomment>window</extracomment>
<translation>Alles</translation>
</message>
<message>
<source>Heat and stores</source>
<extracomment>parts</extracomment>
<translation>Wärme und Speicher</translation>
</message>
<message>
<source>Moving and steering</source>
<extracomment>parts</extracomment>
<translation>Fördern und Steuern</translation>
</message>
<message>
<source>Safety and discharge</source>
<extracomment>parts</extracomment>
<translation>Sicherheit und Abblasen</translation>
</message>
<message>
<source>Emitters</source>
<extracomment>parts</extracomment>
<translation>Heizflächen</translation>
</message>
<message>
<source>Shutting and guarding</source>
<extracomment>parts</extracomment>
<translation>Absperren und Schützen</translation>
</message>
<message>
<source>Filling, venting, draining</source>
<extracomment>parts</extracomment>
<translation>Füllen, Entlüften, Entleeren</translation>
</message>
<message>
<source>Mains and outlets</source>
<extracomment>parts</extracomment>
<translation>Hausanschluss und Zapfstellen</translation>
</message>
<message>
<source>Controls</source>
<extracomment>parts</extracomment>
<translation>Regler</translation>
</message>
<message>
<source>Air vent</source>
<extracomment>parts</extracomment>
<translation>Entlüfter</translation>
</message>
<message>
<source>Lets air out at a high point.</source>
<extracomment>parts</extracomment>
<translation>Lässt an einem Hochpunkt Luft heraus.</translation>
</message>
<message>
<source>connection</source>
<extracomment>parts</extracomment>
<translation>Anschluss</translation>
</message>
<message>
<source>Height</source>
<extracomment>parts</extracomment>
<translation>Höhe</translation>
</message>
<message>
<source>Above the sheet's datum.</source>
<extracomment>parts</extracomment>
<translation>Über der Bezugshöhe des Blatts.</translation>
</message>
<message>
<source>m</source>
<extracomment>parts</extracomment>
<translation>m</translation>
</message>
<message>
<source>Note</source>
<extracomment>parts</extracomment>
<translation>Notiz</translation>
</message>
<message>
<source>Anything the next person should know. It stands in the document and changes no answer.</source>
<extracomment>parts</extracomment>
<translation>Alles, was der Nächste wissen sollte. Es steht im Dokument und ändert keine Antwort.</translation>
</message>
<message>
<source>Balancing valve</source>
<extracomment>parts</extracomment>
<translation>Strangregulierventil</translation>
</message>
<message>
<source>Shares the flow between circuits by its setting.</source>
<extracomment>parts</extracomment>
<translation>Teilt durch seine Einstellung den Volumenstrom zwischen Kreisen auf.</translation>
</message>
<message>
<source>a</source>
<extracomment>parts</extracomment>
<translation>A</translation>
</message>
<message>
<source>b</source>
<extracomment>parts</extracomment>
<translation>B</translation>
</message>
<message>
<source>kv</source>
<extracomment>parts</extracomment>
<translation>Kv-Wert</translation>
</message>
<message>
<source>The flow in cubic metres an hour that loses 1 bar through it when fully open.</source>
<extracomment>parts</extracomment>
<translation>Der Volumenstrom in Kubikmetern je Stunde, bei dem es voll geöffnet 1 bar verliert.</translation>
</message>
<message>
<source>m³/h</source>
<extracomment>parts</extracomment>
<translation>m³/h</translation>
</message>
<message>
<source>Blending valve</source>
<extracomment>parts</extracomment>
<translation>Mischventil</translation>
</message>
<message>
<source>Mixes hot with cold so that what comes out does not scald.</source>
<extracomment>parts</extracomment>
<translation>Mischt Heißes mit Kaltem, damit niemand sich verbrüht.</translation>
</message>
<message>
<source>hot</source>
<extracomment>parts</extracomment>
<translation>warm</translation>
</message>
<message>
<source>cold</source>
<extracomment>parts</extracomment>
<translation>kalt</translation>
</message>
<message>
<source>mixed</source>
<extracomment>parts</extracomment>
<translation>gemischt</translation>
</message>
<message>
<source>Set temperature</source>
<extracomment>parts</extracomment>
<translation>Eingestellte Temperatur</translation>
</message>
<message>
<source>The temperature to which the valve is set, stamped on it or read off its scale.</source>
<extracomment>parts</extracomment>
<translation>Die Temperatur, auf die das Ventil eingestellt ist, aufgeprägt oder an seiner Skala abgelesen.</translation>
</message>
<message>
<source>Bypass valve</source>
<extracomment>parts</extracomment>
<translation>Überströmventil</translation>
</message>
<message>
<source>A spring-loaded valve that gives the pump a way round when the zones shut.</source>
<extracomment>parts</extracomment>
<translation>Ein federbelastetes Ventil, das der Pumpe einen Umweg lässt, wenn die Heizkreise schließen.</translation>
</message>
<message>
<source>in</source>
<extracomment>parts</extracomment>
<translation>Eintritt</translation>
</message>
<message>
<source>out</source>
<extracomment>parts</extracomment>
<translation>Austritt</translation>
</message>
<message>
<source>Set difference</source>
<extracomment>parts</extracomment>
<translation>Eingestellte Druckdifferenz</translation>
</message>
<message>
<source>The difference in pressure at which the bypass begins to open.</source>
<extracomment>parts</extracomment>
<translation>Der Differenzdruck, bei dem das Überströmventil zu öffnen beginnt.</translation>
</message>
<message>
<source>kPa</source>
<extracomment>parts</extracomment>
<translation>kPa</translation>
</message>
<message>
<source>Cap</source>
<extracomment>parts</extracomment>
<translation>Kappe</translation>
</message>
<message>
<source>Closes a port or a pipe on purpose.</source>
<extracomment>parts</extracomment>
<translation>Verschließt mit Absicht einen Anschluss oder ein Rohr.</translation>
</message>
<message>
<source>Check valve</source>
<extracomment>parts</extracomment>
<translation>Rückflussverhinderer</translation>
</message>
<message>
<source>Lets water through in the direction of its triangle only.</source>
<extracomment>parts</extracomment>
<translation>Lässt Wasser nur in Richtung seines Dreiecks durch.</translation>
</message>
<message>
<source>Cold main</source>
<extracomment>parts</extracomment>
<translation>Hausanschluss</translation>
</message>
<message>
<source>The water supply as it comes into the building.</source>
<extracomment>parts</extracomment>
<translation>Die Wasserversorgung, wie sie ins Gebäude kommt.</translation>
</message>
<message>
<source>outlet</source>
<extracomment>parts</extracomment>
<translation>Auslass</translation>
</message>
<message>
<source>Standing pressure</source>
<extracomment>parts</extracomment>
<translation>Ruhedruck</translation>
</message>
<message>
<source>The main's highest pressure while nothing runs, as at night.</source>
<extracomment>parts</extracomment>
<translation>Der höchste Druck des Hausanschlusses, wenn nichts läuft, etwa nachts.</translation>
</message>
<message>
<source>bar</source>
<extracomment>parts</extracomment>
<translation>bar</translation>
</message>
<message>
<source>Running pressure</source>
<extracomment>parts</extracomment>
<translation>Fließdruck</translation>
</message>
<message>
<source>The main's pressure while water runs at the flow given beside it.</source>
<extracomment>parts</extracomment>
<translation>Der Druck des Hausanschlusses, während Wasser mit dem daneben angegebenen Volumenstrom läuft.</translation>
</message>
<message>
<source>Flow rate</source>
<extracomment>parts</extracomment>
<translation>Volumenstrom</translation>
</message>
<message>
<source>The most water that the main gives at the running pressure, measured at the stop valve.</source>
<extracomment>parts</extracomment>
<translation>Das meiste Wasser, das der Hausanschluss beim Fließdruck gibt, gemessen am Hauptabsperrventil.</translation>
</message>
<message>
<source>l/min</source>
<extracomment>parts</extracomment>
<translation>l/min</translation>
</message>
<message>
<source>Combination heat source</source>
<extracomment>parts</extracomment>
<translation>Kombi-Wärmeerzeuger</translation>
</message>
<message>
<source>A heat source that also heats mains water as it is drawn.</source>
<extracomment>parts</extracomment>
<translation>Ein Wärmeerzeuger, der auch Trinkwasser im Durchlauf erwärmt.</translation>
</message>
<message>
<source>relief</source>
<extracomment>parts</extracomment>
<translation>Abblaseanschluss</translation>
</message>
<message>
<source>Output</source>
<extracomment>parts</extracomment>
<translation>Leistung</translation>
</message>
<message>
<source>The most heat that a heat source gives; of emitters, what they give with water 50 K warmer than the room.</source>
<extracomment>parts</extracomment>
<translation>Bei einem Wärmeerzeuger die größte Wärmeleistung; bei Heizkörpern, was sie mit Wasser abgeben, das 50 K wärmer ist als der Raum.</translation>
</message>
<message>
<source>kW</source>
<extracomment>parts</extracomment>
<translation>kW</translation>
</message>
<message>
<source>Water content</source>
<extracomment>parts</extracomment>
<translation>Wasserinhalt</translation>
</message>
<message>
<source>The heating water inside it.</source>
<extracomment>parts</extracomment>
<translation>Das Heizwasser darin.</translation>
</message>
<message>
<source>l</source>
<extracomment>parts</extracomment>
<translation>l</translation>
</message>
<message>
<source>Least flow</source>
<extracomment>parts</extracomment>
<translation>Mindestvolumenstrom</translation>
</message>
<message>
<source>The least flow through it while it heats, from its manual.</source>
<extracomment>parts</extracomment>
<translation>Der kleinste Volumenstrom, während er heizt, laut Anleitung.</translation>
</message>
<message>
<source>Least circulating content</source>
<extracomment>parts</extracomment>
<translation>Mindestinhalt im Umlauf</translation>
</message>
<message>
<source>The least water that must be able to go round through it, from its manual.</source>
<extracomment>parts</extracomment>
<translation>Das wenigste Wasser, das durch ihn umlaufen können muss, laut Anleitung.</translation>
</message>
<message>
<source>How long the pump must go on after the heat is off, to carry away what is stored in it.</source>
<extracomment>parts</extracomment>
<translation>Wie lange die Pumpe nach dem Abschalten der Wärme weiterlaufen muss, um die gespeicherte Wärme abzuführen.</translation>
</message>
<message>
<source>min</source>
<extracomment>parts</extracomment>
<translation>min</translation>
</message>
<message>
<source>Highest pressure</source>
<extracomment>parts</extracomment>
<translation>Höchstdruck</translation>
</message>
<message>
<source>The highest pressure that it is made for, from its data plate.</source>
<extracomment>parts</extracomment>
<translation>Der höchste Druck, für den es gebaut ist, laut Typenschild.</translation>
</message>
<message>
<source>Highest flow temperature</source>
<extracomment>parts</extracomment>
<translation>Höchste Vorlauftemperatur</translation>
</message>
<message>
<source>The hottest heating water that may enter or leave it.</source>
<extracomment>parts</extracomment>
<translation>Das heißeste Heizwasser, das eintreten oder austreten darf.</translation>
</message>
<message>
<source>Heat</source>
<extracomment>parts</extracomment>
<translation>Wärmeabgabe</translation>
</message>
<message>
<source>Uncontrolled: it goes on heating when called off, as a solid-fuel fire does.</source>
<extracomment>parts</extracomment>
<translation>Nicht regelbar: heizt weiter, wenn nichts mehr gefordert ist, wie ein Feuer mit festem Brennstoff.</translation>
</message>
<message>
<source>switched</source>
<extracomment>parts</extracomment>
<translation>abschaltbar</translation>
</message>
<message>
<source>uncontrolled</source>
<extracomment>parts</extracomment>
<translation>nicht regelbar</translation>
</message>
<message>
<source>High limit</source>
<extracomment>parts</extracomment>
<translation>Sicherheitstemperaturbegrenzer</translation>
</message>
<message>
<source>What stops the heat when the thermostat fails. One that must be reset by hand stays off until somebody has looked why.</source>
<extracomment>parts</extracomment>
<translation>Was die Wärme unterbricht, wenn der Thermostat versagt. Wird von Hand entriegelt, bleibt sie aus, bis jemand nach der Ursache gesehen hat.</translation>
</message>
<message>
<source>hand reset</source>
<extracomment>parts</extracomment>
<translation>von Hand zu entriegeln</translation>
</message>
<message>
<source>self reset</source>
<extracomment>parts</extracomment>
<translation>selbsttätig rückstellend</translation>
</message>
<message>
<source>Built in</source>
<extracomment>parts</extracomment>
<translation>Eingebaut</translation>
</message>
<message>
<source>What stands inside the casing already and need not be drawn. Its manual lists it.</source>
<extracomment>parts</extracomment>
<translation>Was schon im Gehäuse sitzt und nicht gezeichnet werden muss. Die Anleitung führt es auf.</translation>
</message>
<message>
<source>pump</source>
<extracomment>parts</extracomment>
<translation>Pumpe</translation>
</message>
<message>
<source>vessel</source>
<extracomment>parts</extracomment>
<translation>Ausdehnungsgefäß</translation>
</message>
<message>
<source>safety valve</source>
<extracomment>parts</extracomment>
<translation>Sicherheitsventil</translation>
</message>
<message>
<source>bypass</source>
<extracomment>parts</extracomment>
<translation>Überströmventil</translation>
</message>
<message>
<source>gauge</source>
<extracomment>parts</extracomment>
<translation>Manometer</translation>
</message>
<message>
<source>filling link</source>
<extracomment>parts</extracomment>
<translation>Füllverbindung</translation>
</message>
<message>
<source>air vent</source>
<extracomment>parts</extracomment>
<translation>Entlüfter</translation>
</message>
<message>
<source>check valve</source>
<extracomment>parts</extracomment>
<translation>Rückflussverhinderer</translation>
</message>
<message>
<source>Built-in vessel</source>
<extracomment>parts</extracomment>
<translation>Eingebautes Ausdehnungsgefäß</translation>
</message>
<message>
<source>The whole volume of the expansion vessel inside, gas and water together.</source>
<extracomment>parts</extracomment>
<translation>Das Gesamtvolumen des eingebauten Ausdehnungsgefäßes, Gas und Wasser zusammen.</translation>
</message>
<message>
<source>Built-in vessel's precharge</source>
<extracomment>parts</extracomment>
<translation>Vordruck des eingebauten Ausdehnungsgefäßes</translation>
</message>
<message>
<source>The gas pressure of the vessel inside, read while its water side is empty.</source>
<extracomment>parts</extracomment>
<translation>Der Gasdruck des eingebauten Gefäßes, abgelesen bei entleerter Wasserseite.</translation>
</message>
<message>
<source>Built-in safety valve set at</source>
<extracomment>parts</extracomment>
<translation>Ansprechdruck des eingebauten Sicherheitsventils</translation>
</message>
<message>
<source>The pressure at which the safety valve inside opens; it is stamped on the valve.</source>
<extracomment>parts</extracomment>
<translation>Der Druck, bei dem das eingebaute Sicherheitsventil öffnet; er ist auf das Ventil geprägt.</translation>
</message>
<message>
<source>Built-in safety valve's outlet</source>
<extracomment>parts</extracomment>
<translation>Austritt des eingebauten Sicherheitsventils</translation>
</message>
<message>
<source>The bore of the outlet of the safety valve inside.</source>
<extracomment>parts</extracomment>
<translation>Die Weite des Auslasses am eingebauten Sicherheitsventil.</translation>
</message>
<message>
<source>mm</source>
<extracomment>parts</extracomment>
<translation>mm</translation>
</message>
<message>
<source>Combined feed and vent allowed</source>
<extracomment>parts</extracomment>
<translation>Gemeinsame Speise- und Entlüftungsleitung zulässig</translation>
</message>
<message>
<source>The maker allows one pipe to be both cold feed and open vent. Only the manual can tell.</source>
<extracomment>parts</extracomment>
<translation>Der Hersteller lässt zu, dass eine Leitung zugleich Speiseleitung und offene Entlüftung ist. Das sagt nur die Anleitung.</translation>
</message>
<message>
<source>Built-in pump's shut-off head</source>
<extracomment>parts</extracomment>
<translation>Nullförderhöhe der eingebauten Pumpe</translation>
</message>
<message>
<source>The head of the pump inside against shut valves.</source>
<extracomment>parts</extracomment>
<translation>Die Förderhöhe der eingebauten Pumpe gegen geschlossene Ventile.</translation>
</message>
<message>
<source>Built-in pump's most flow</source>
<extracomment>parts</extracomment>
<translation>Größter Volumenstrom der eingebauten Pumpe</translation>
</message>
<message>
<source>What the pump inside moves against no resistance at all.</source>
<extracomment>parts</extracomment>
<translation>Was die eingebaute Pumpe ganz ohne Widerstand fördert.</translation>
</message>
<message>
<source>Hot water flow</source>
<extracomment>parts</extracomment>
<translation>Warmwasser-Volumenstrom</translation>
</message>
<message>
<source>The most hot water that it heats at once, from its data plate.</source>
<extracomment>parts</extracomment>
<translation>Das meiste Warmwasser, das es auf einmal erwärmt, laut Typenschild.</translation>
</message>
<message>
<source>Dirt separator</source>
<extracomment>parts</extracomment>
<translation>Schlammabscheider</translation>
</message>
<message>
<source>Collects what the water carries, so that it can be let out.</source>
<extracomment>parts</extracomment>
<translation>Sammelt, was das Wasser mitführt, damit es abgelassen werden kann.</translation>
</message>
<message>
<source>Isolating valves</source>
<extracomment>parts</extracomment>
<translation>Absperrventile</translation>
</message>
<message>
<source>It has a valve at each side, which anybody who services it can shut.</source>
<extracomment>parts</extracomment>
<translation>Es hat an jeder Seite ein Ventil, das jeder bei der Wartung schließen kann.</translation>
</message>
<message>
<source>Discharge end</source>
<extracomment>parts</extracomment>
<translation>Ende der Abblaseleitung</translation>
</message>
<message>
<source>Where hot water or steam may come out at any time.</source>
<extracomment>parts</extracomment>
<translation>Wo jederzeit heißes Wasser oder Dampf austreten kann.</translation>
</message>
<message>
<source>inlet</source>
<extracomment>parts</extracomment>
<translation>Eintritt</translation>
</message>
<message>
<source>Place</source>
<extracomment>parts</extracomment>
<translation>Ort</translation>
</message>
<message>
<source>Where the discharge ends. What is unknown is asked for, and never taken for safe.</source>
<extracomment>parts</extracomment>
<translation>Wo die Abblaseleitung endet. Was nicht bekannt ist, wird erfragt und nie für sicher gehalten.</translation>
</message>
<message>
<source>outside low level</source>
<extracomment>parts</extracomment>
<translation>im Freien auf niedriger Höhe</translation>
</message>
<message>
<source>gully below grating</source>
<extracomment>parts</extracomment>
<translation>Ablauf unter dem Rost</translation>
</message>
<message>
<source>roof or high level</source>
<extracomment>parts</extracomment>
<translation>Dach oder große Höhe</translation>
</message>
<message>
<source>soil stack</source>
<extracomment>parts</extracomment>
<translation>Fallrohr</translation>
</message>
<message>
<source>inside</source>
<extracomment>parts</extracomment>
<translation>im Gebäude</translation>
</message>
<message>
<source>unknown</source>
<extracomment>parts</extracomment>
<translation>unbekannt</translation>
</message>
<message>
<source>In sight</source>
<extracomment>parts</extracomment>
<translation>In Sicht</translation>
</message>
<message>
<source>It can be seen where people come by, so that somebody notices when it runs.</source>
<extracomment>parts</extracomment>
<translation>Es ist dort zu sehen, wo Menschen vorbeikommen, sodass jemand bemerkt, wenn es läuft.</translation>
</message>
<message>
<source>Clear of people</source>
<extracomment>parts</extracomment>
<translation>Fern von Personen</translation>
</message>
<message>
<source>What comes out is scalding: yes, where it can reach nobody who passes or stands there.</source>
<extracomment>parts</extracomment>
<translation>Was austritt, verbrüht: Ja, wenn es niemanden treffen kann, der dort vorbeigeht oder steht.</translation>
</message>
<message>
<source>Conditions for this place met</source>
<extracomment>parts</extracomment>
<translation>Bedingungen für diesen Ort erfüllt</translation>
</message>
<message>
<source>Whether this end keeps every condition that the rule book sets for a roof, a high level or a soil stack. Leave it open until somebody has looked.</source>
<extracomment>parts</extracomment>
<translation>Ob dieses Ende alle Bedingungen erfüllt, die das Regelwerk für ein Dach, eine hohe Lage oder eine Fallleitung stellt. Offen lassen, bis jemand nachgesehen hat.</translation>
</message>
<message>
<source>Drain</source>
<extracomment>parts</extracomment>
<translation>Entleerung</translation>
</message>
<message>
<source>Empties the pipework above it.</source>
<extracomment>parts</extracomment>
<translation>Entleert die Leitungen darüber.</translation>
</message>
<message>
<source>Expansion relief valve</source>
<extracomment>parts</extracomment>
<translation>Ausdehnungs-Sicherheitsventil</translation>
</message>
<message>
<source>Lifts on the cold side of a store when its vessel can take no more.</source>
<extracomment>parts</extracomment>
<translation>Spricht auf der Kaltseite eines Speichers an, wenn sein Ausdehnungsgefäß nichts mehr aufnimmt.</translation>
</message>
<message>
<source>Set pressure</source>
<extracomment>parts</extracomment>
<translation>Ansprechdruck</translation>
</message>
<message>
<source>The pressure to which the valve is set, stamped on it or read off its scale.</source>
<extracomment>parts</extracomment>
<translation>Der Druck, auf den das Ventil eingestellt ist, aufgeprägt oder an seiner Skala abgelesen.</translation>
</message>
<message>
<source>Outlet</source>
<extracomment>parts</extracomment>
<translation>Auslass</translation>
</message>
<message>
<source>The bore of the valve's outlet. The discharge pipe may not be narrower.</source>
<extracomment>parts</extracomment>
<translation>Die Weite des Ventilauslasses. Die Abblaseleitung darf nicht enger sein.</translation>
</message>
<message>
<source>Expansion vessel</source>
<extracomment>parts</extracomment>
<translation>Ausdehnungsgefäß</translation>
</message>
<message>
<source>Takes up the swell of heated water against a cushion of gas.</source>
<extracomment>parts</extracomment>
<translation>Nimmt die Ausdehnung erwärmten Wassers gegen ein Gaspolster auf.</translation>
</message>
<message>
<source>Volume</source>
<extracomment>parts</extracomment>
<translation>Nennvolumen</translation>
</message>
<message>
<source>Its whole volume, from its data plate.</source>
<extracomment>parts</extracomment>
<translation>Das Gesamtvolumen, laut Typenschild.</translation>
</message>
<message>
<source>Precharge</source>
<extracomment>parts</extracomment>
<translation>Vordruck</translation>
</message>
<message>
<source>The gas pressure of the vessel, read while its water side is empty.</source>
<extracomment>parts</extracomment>
<translation>Der Gasdruck des Gefäßes, abgelesen bei entleerter Wasserseite.</translation>
</message>
<message>
<source>Feed cistern</source>
<extracomment>parts</extracomment>
<translation>Vorlagebehälter</translation>
</message>
<message>
<source>Feeds heating or hot water from above, open to air.</source>
<extracomment>parts</extracomment>
<translation>Speist Heizung oder Warmwasser von oben, zur Luft hin offen.</translation>
</message>
<message>
<source>supply</source>
<extracomment>parts</extracomment>
<translation>Zulauf</translation>
</message>
<message>
<source>feed</source>
<extracomment>parts</extracomment>
<translation>Speisung</translation>
</message>
<message>
<source>vent over</source>
<extracomment>parts</extracomment>
<translation>Entlüftung darüber</translation>
</message>
<message>
<source>warning</source>
<extracomment>parts</extracomment>
<translation>Überlauf</translation>
</message>
<message>
<source>Content</source>
<extracomment>parts</extracomment>
<translation>Inhalt</translation>
</message>
<message>
<source>The water that the cistern holds, filled to its water line.</source>
<extracomment>parts</extracomment>
<translation>Das Wasser, das der Behälter bis zur Wasserlinie fasst.</translation>
</message>
<message>
<source>Water level</source>
<extracomment>parts</extracomment>
<translation>Wasserstand</translation>
</message>
<message>
<source>Serves</source>
<extracomment>parts</extracomment>
<translation>Versorgt</translation>
</message>
<message>
<source>What it works for, where the circuit alone does not tell.</source>
<extracomment>parts</extracomment>
<translation>Wofür es arbeitet, wo der Kreis allein es nicht zeigt.</translation>
</message>
<message>
<source>heating</source>
<extracomment>parts</extracomment>
<translation>Heizung</translation>
</message>
<message>
<source>hot water</source>
<extracomment>parts</extracomment>
<translation>Warmwasser</translation>
</message>
<message>
<source>Filling link</source>
<extracomment>parts</extracomment>
<translation>Füllverbindung</translation>
</message>
<message>
<source>Joins main and heating for filling only; taken off afterwards.</source>
<extracomment>parts</extracomment>
<translation>Verbindet Hausanschluss und Heizung nur zum Füllen; wird danach abgenommen.</translation>
</message>
<message>
<source>system</source>
<extracomment>parts</extracomment>
<translation>Anlage</translation>
</message>
<message>
<source>Left connected</source>
<extracomment>parts</extracomment>
<translation>Bleibt verbunden</translation>
</message>
<message>
<source>The link stays on between fillings. It should be taken off.</source>
<extracomment>parts</extracomment>
<translation>Die Füllverbindung bleibt zwischen den Füllungen angeschlossen. Sie sollte abgenommen werden.</translation>
</message>
<message>
<source>Double check valve</source>
<extracomment>parts</extracomment>
<translation>Doppelter Rückflussverhinderer</translation>
</message>
<message>
<source>The link has two check valves in a row, so that heating water cannot come back into the main.</source>
<extracomment>parts</extracomment>
<translation>Die Füllverbindung hat zwei Rückflussverhinderer hintereinander, sodass kein Heizwasser ins Netz zurückkann.</translation>
</message>
<message>
<source>Heat exchanger</source>
<extracomment>parts</extracomment>
<translation>Wärmeübertrager</translation>
</message>
<message>
<source>Passes heat from one water to another that never meet.</source>
<extracomment>parts</extracomment>
<translation>Gibt Wärme von einem Wasser an ein anderes, ohne dass beide sich berühren.</translation>
</message>
<message>
<source>primary in</source>
<extracomment>parts</extracomment>
<translation>Primär-Eintritt</translation>
</message>
<message>
<source>primary out</source>
<extracomment>parts</extracomment>
<translation>Primär-Austritt</translation>
</message>
<message>
<source>secondary in</source>
<extracomment>parts</extracomment>
<translation>Sekundär-Eintritt</translation>
</message>
<message>
<source>secondary out</source>
<extracomment>parts</extracomment>
<translation>Sekundär-Austritt</translation>
</message>
<message>
<source>Heat source</source>
<extracomment>parts</extracomment>
<translation>Wärmeerzeuger</translation>
</message>
<message>
<source>Heats the water that the pump sends through it.</source>
<extracomment>parts</extracomment>
<translation>Erwärmt das Wasser, das die Pumpe durch ihn schickt.</translation>
</message>
<message>
<source>Heating zone</source>
<extracomment>parts</extracomment>
<translation>Heizkreis</translation>
</message>
<message>
<source>All the radiators or floor loops of one zone, drawn as one.</source>
<extracomment>parts</extracomment>
<translation>Alle Heizkörper oder Fußbodenschleifen eines Heizkreises, als eines gezeichnet.</translation>
</message>
<message>
<source>All thermostatic</source>
<extracomment>parts</extracomment>
<translation>Alle thermostatisch</translation>
</message>
<message>
<source>Every emitter of the group has a thermostatic head, so that all of them can shut at once.</source>
<extracomment>parts</extracomment>
<translation>Jeder Heizkörper der Gruppe hat einen Thermostatkopf, sodass alle zugleich schließen können.</translation>
</message>
<message>
<source>Resistance</source>
<extracomment>parts</extracomment>
<translation>Widerstand</translation>
</message>
<message>
<source>The pressure that the group of emitters loses at the flow it is designed for.</source>
<extracomment>parts</extracomment>
<translation>Der Druck, den die Heizkörpergruppe bei ihrem Auslegungsvolumenstrom verliert.</translation>
</message>
<message>
<source>Inlet group</source>
<extracomment>parts</extracomment>
<translation>Sicherheitsgruppe</translation>
</message>
<message>
<source>What stands between the main and a store, in one body.</source>
<extracomment>parts</extracomment>
<translation>Was zwischen Hausanschluss und Speicher steht, in einem Gehäuse.</translation>
</message>
<message>
<source>balanced cold</source>
<extracomment>parts</extracomment>
<translation>druckgleiches Kaltwasser</translation>
</message>
<message>
<source>Reduces to</source>
<extracomment>parts</extracomment>
<translation>Mindert auf</translation>
</message>
<message>
<source>The pressure to which the group's reducing valve brings the main.</source>
<extracomment>parts</extracomment>
<translation>Der Druck, auf den der Druckminderer der Gruppe das Netz bringt.</translation>
</message>
<message>
<source>Relief set at</source>
<extracomment>parts</extracomment>
<translation>Ansprechdruck des Sicherheitsventils</translation>
</message>
<message>
<source>The pressure at which the group's expansion relief valve opens.</source>
<extracomment>parts</extracomment>
<translation>Der Druck, bei dem das Sicherheitsventil der Gruppe öffnet.</translation>
</message>
<message>
<source>Relief outlet</source>
<extracomment>parts</extracomment>
<translation>Abblaseanschluss</translation>
</message>
<message>
<source>The bore of the outlet of the group's relief valve.</source>
<extracomment>parts</extracomment>
<translation>Die Weite des Auslasses am Sicherheitsventil der Gruppe.</translation>
</message>
<message>
<source>Isolating valve</source>
<extracomment>parts</extracomment>
<translation>Absperrventil</translation>
</message>
<message>
<source>A valve anybody can shut by hand, unless it is secured.</source>
<extracomment>parts</extracomment>
<translation>Ein Ventil, das jeder von Hand schließen kann, sofern es nicht gesichert ist.</translation>
</message>
<message>
<source>Secured</source>
<extracomment>parts</extracomment>
<translation>Gesichert</translation>
</message>
<message>
<source>Locked, sealed or capped against unintended shutting. A screwdriver slot is not secured.</source>
<extracomment>parts</extracomment>
<translation>Gegen unbeabsichtigtes Schließen abgeschlossen, plombiert oder mit Kappe versehen (Kappenventil). Ein Schlitz für den Schraubendreher ist keine Sicherung.</translation>
</message>
<message>
<source>Open vent</source>
<extracomment>parts</extracomment>
<translation>Offene Entlüftung</translation>
</message>
<message>
<source>Ends open over a cistern: steam and swelling water can always get out.</source>
<extracomment>parts</extracomment>
<translation>Endet offen über einem Behälter: Dampf und Ausdehnungswasser können immer entweichen.</translation>
</message>
<message>
<source>Over cistern</source>
<extracomment>parts</extracomment>
<translation>Über Behälter</translation>
</message>
<message>
<source>The cistern over which the vent ends.</source>
<extracomment>parts</extracomment>
<translation>Der Behälter, über dem die Entlüftung endet.</translation>
</message>
<message>
<source>Height above water</source>
<extracomment>parts</extracomment>
<translation>Höhe über dem Wasserspiegel</translation>
</message>
<message>
<source>How far the vent rises above the water line before it turns down over the cistern.</source>
<extracomment>parts</extracomment>
<translation>Wie weit die Entlüftung über die Wasserlinie steigt, bevor sie über dem Behälter nach unten führt.</translation>
</message>
<message>
<source>A tap, a shower, a bath or another place where water is drawn.</source>
<extracomment>parts</extracomment>
<translation>Ein Hahn, eine Dusche, eine Wanne oder eine andere Stelle, an der Wasser gezapft wird.</translation>
</message>
<message>
<source>Fitting</source>
<extracomment>parts</extracomment>
<translation>Armatur</translation>
</message>
<message>
<source>What the outlet serves. It decides how much water is needed there, and whether it must be blended.</source>
<extracomment>parts</extracomment>
<translation>Was die Zapfstelle versorgt. Danach richtet sich, wie viel Wasser dort gebraucht wird und ob es gemischt werden muss.</translation>
</message>
<message>
<source>basin</source>
<extracomment>parts</extracomment>
<translation>Waschtisch</translation>
</message>
<message>
<source>bath</source>
<extracomment>parts</extracomment>
<translation>Badewanne</translation>
</message>
<message>
<source>shower</source>
<extracomment>parts</extracomment>
<translation>Dusche</translation>
</message>
<message>
<source>sink</source>
<extracomment>parts</extracomment>
<translation>Spüle</translation>
</message>
<message>
<source>wc</source>
<extracomment>parts</extracomment>
<translation>WC</translation>
</message>
<message>
<source>other</source>
<extracomment>parts</extracomment>
<translation>andere</translation>
</message>
<message>
<source>Pressure gauge</source>
<extracomment>parts</extracomment>
<translation>Manometer</translation>
</message>
<message>
<source>Shows the pressure of the water it stands on.</source>
<extracomment>parts</extracomment>
<translation>Zeigt den Druck des Wassers, an dem es sitzt.</translation>
</message>
<message>
<source>Pressure reducing valve</source>
<extracomment>parts</extracomment>
<translation>Druckminderer</translation>
</message>
<message>
<source>Brings the main down to the pressure the store is made for.</source>
<extracomment>parts</extracomment>
<translation>Mindert den Druck des Hausanschlusses auf den, für den der Speicher gebaut ist.</translation>
</message>
<message>
<source>Programmer</source>
<extracomment>parts</extracomment>
<translation>Zeitschaltuhr</translation>
</message>
<message>
<source>Says at what times a zone may call.</source>
<extracomment>parts</extracomment>
<translation>Bestimmt, zu welchen Zeiten ein Heizkreis Wärme fordern darf.</translation>
</message>
<message>
<source>Pump</source>
<extracomment>parts</extracomment>
<translation>Pumpe</translation>
</message>
<message>
<source>Drives water in the direction of its triangle.</source>
<extracomment>parts</extracomment>
<translation>Fördert Wasser in Richtung ihres Dreiecks.</translation>
</message>
<message>
<source>Shut-off head</source>
<extracomment>parts</extracomment>
<translation>Nullförderhöhe</translation>
</message>
<message>
<source>The pump's head against shut valves: where its curve begins.</source>
<extracomment>parts</extracomment>
<translation>Die Förderhöhe der Pumpe gegen geschlossene Ventile: wo ihre Kennlinie beginnt.</translation>
</message>
<message>
<source>Most flow</source>
<extracomment>parts</extracomment>
<translation>Größter Volumenstrom</translation>
</message>
<message>
<source>What the pump moves against no resistance at all: where its curve ends.</source>
<extracomment>parts</extracomment>
<translation>Was die Pumpe ganz ohne Widerstand fördert: wo ihre Kennlinie endet.</translation>
</message>
<message>
<source>Radiator</source>
<extracomment>parts</extracomment>
<translation>Heizkörper</translation>
</message>
<message>
<source>Gives heat to one room.</source>
<extracomment>parts</extracomment>
<translation>Gibt Wärme an einen Raum ab.</translation>
</message>
<message>
<source>The heat that it gives with water 50 K warmer than the room, as its maker states it.</source>
<extracomment>parts</extracomment>
<translation>Die Wärmeleistung mit Wasser, das 50 K wärmer ist als der Raum, wie der Hersteller sie angibt.</translation>
</message>
<message>
<source>W</source>
<extracomment>parts</extracomment>
<translation>W</translation>
</message>
<message>
<source>Thermostatic head</source>
<extracomment>parts</extracomment>
<translation>Thermostatkopf</translation>
</message>
<message>
<source>The radiator has a thermostatic head, which shuts it when the room is warm.</source>
<extracomment>parts</extracomment>
<translation>Der Heizkörper hat einen Thermostatkopf, der ihn schließt, wenn der Raum warm ist.</translation>
</message>
<message>
<source>Valves</source>
<extracomment>parts</extracomment>
<translation>Ventile</translation>
</message>
<message>
<source>The radiator has a valve at each end, so that it can be shut off.</source>
<extracomment>parts</extracomment>
<translation>Der Heizkörper hat an jedem Ende ein Ventil, sodass er abgesperrt werden kann.</translation>
</message>
<message>
<source>Hand wheel</source>
<extracomment>parts</extracomment>
<translation>Handrad</translation>
</message>
<message>
<source>The householder can shut it.</source>
<extracomment>parts</extracomment>
<translation>Der Bewohner kann es schließen.</translation>
</message>
<message>
<source>Room thermostat</source>
<extracomment>parts</extracomment>
<translation>Raumthermostat</translation>
</message>
<message>
<source>Calls for heat until its room is warm.</source>
<extracomment>parts</extracomment>
<translation>Fordert Wärme, bis sein Raum warm ist.</translation>
</message>
<message>
<source>Safety valve</source>
<extracomment>parts</extracomment>
<translation>Sicherheitsventil</translation>
</message>
<message>
<source>Lifts at its set pressure and lets heating water out.</source>
<extracomment>parts</extracomment>
<translation>Öffnet bei seinem Ansprechdruck und lässt Heizwasser ab.</translation>
</message>
<message>
<source>Capacity</source>
<extracomment>parts</extracomment>
<translation>Abblaseleistung</translation>
</message>
<message>
<source>The heat whose steam the valve can let off at its set pressure; it is stamped on the valve.</source>
<extracomment>parts</extracomment>
<translation>Die Wärmeleistung, deren Dampf das Ventil beim Ansprechdruck abführen kann; sie ist auf das Ventil geprägt.</translation>
</message>
<message>
<source>Separator</source>
<extracomment>parts</extracomment>
<translation>Hydraulische Weiche</translation>
</message>
<message>
<source>A wide vessel in which flow and return meet, so that pumps do not fight.</source>
<extracomment>parts</extracomment>
<translation>Ein weites Gefäß, in dem Vorlauf und Rücklauf sich treffen, damit Pumpen nicht gegeneinander arbeiten.</translation>
</message>
<message>
<source>source flow</source>
<extracomment>parts</extracomment>
<translation>Vorlauf Erzeuger</translation>
</message>
<message>
<source>source return</source>
<extracomment>parts</extracomment>
<translation>Rücklauf Erzeuger</translation>
</message>
<message>
<source>load flow</source>
<extracomment>parts</extracomment>
<translation>Vorlauf Verbraucher</translation>
</message>
<message>
<source>load return</source>
<extracomment>parts</extracomment>
<translation>Rücklauf Verbraucher</translation>
</message>
<message>
<source>Store thermostat</source>
<extracomment>parts</extracomment>
<translation>Speicherthermostat</translation>
</message>
<message>
<source>Calls for heat until the store is hot.</source>
<extracomment>parts</extracomment>
<translation>Fordert Wärme, bis der Speicher warm ist.</translation>
</message>
<message>
<source>Strainer</source>
<extracomment>parts</extracomment>
<translation>Schmutzfänger</translation>
</message>
<message>
<source>Catches grit before it reaches the valves behind it.</source>
<extracomment>parts</extracomment>
<translation>Fängt Körner auf, bevor sie die Ventile dahinter erreichen.</translation>
</message>
<message>
<source>Tee</source>
<extracomment>parts</extracomment>
<translation>T-Stück</translation>
</message>
<message>
<source>Joins three pipes; made by ending a pipe on a pipe.</source>
<extracomment>parts</extracomment>
<translation>Verbindet drei Rohre; entsteht, wenn ein Rohr auf einem Rohr endet.</translation>
</message>
<message>
<source>branch</source>
<extracomment>parts</extracomment>
<translation>Abzweig</translation>
</message>
<message>
<source>Temperature relief valve</source>
<extracomment>parts</extracomment>
<translation>Temperatur-Sicherheitsventil</translation>
</message>
<message>
<source>Lifts when a store's water grows too hot.</source>
<extracomment>parts</extracomment>
<translation>Öffnet, wenn das Wasser eines Speichers zu heiß wird.</translation>
</message>
<message>
<source>Three-port valve</source>
<extracomment>parts</extracomment>
<translation>Dreiwegeventil</translation>
</message>
<message>
<source>A motorised valve whose two legs are never both shut.</source>
<extracomment>parts</extracomment>
<translation>Ein Motorventil, dessen zwei Wege nie beide zu sind.</translation>
</message>
<message>
<source>ab</source>
<extracomment>parts</extracomment>
<translation>AB</translation>
</message>
<message>
<source>Action</source>
<extracomment>parts</extracomment>
<translation>Wirkung</translation>
</message>
<message>
<source>Divert: one leg or the other. Share: both as well.</source>
<extracomment>parts</extracomment>
<translation>Umschalten: der eine oder der andere Weg. Verteilen: auch beide zugleich.</translation>
</message>
<message>
<source>divert</source>
<extracomment>parts</extracomment>
<translation>umschalten</translation>
</message>
<message>
<source>share</source>
<extracomment>parts</extracomment>
<translation>verteilen</translation>
</message>
<message>
<source>Where the valve goes when its supply fails: leg a, leg b, or it stays where it is.</source>
<extracomment>parts</extracomment>
<translation>Wohin das Ventil geht, wenn seine Versorgung ausfällt: Weg a, Weg b, oder es bleibt stehen.</translation>
</message>
<message>
<source>stays</source>
<extracomment>parts</extracomment>
<translation>bleibt stehen</translation>
</message>
<message>
<source>Tundish</source>
<extracomment>parts</extracomment>
<translation>Ablauftrichter</translation>
</message>
<message>
<source>A funnel under a pipe's end: a discharge is seen, and nothing is drawn back.</source>
<extracomment>parts</extracomment>
<translation>Ein Trichter mit Geruchverschluss unter einem Rohrende: Man sieht ein Abblasen, und nichts wird zurückgesaugt.</translation>
</message>
<message>
<source>Unvented store</source>
<extracomment>parts</extracomment>
<translation>Geschlossener Speicher</translation>
</message>
<message>
<source>A store fed by the main, with no cistern and no vent: its safety is in its valves.</source>
<extracomment>parts</extracomment>
<translation>Ein Speicher am Hausanschluss, ohne Behälter und ohne Entlüftung: Seine Sicherheit liegt in seinen Ventilen.</translation>
</message>
<message>
<source>coil flow</source>
<extracomment>parts</extracomment>
<translation>Heizschlange Vorlauf</translation>
</message>
<message>
<source>coil return</source>
<extracomment>parts</extracomment>
<translation>Heizschlange Rücklauf</translation>
</message>
<message>
<source>secondary return</source>
<extracomment>parts</extracomment>
<translation>Zirkulationsanschluss</translation>
</message>
<message>
<source>relief outlet</source>
<extracomment>parts</extracomment>
<translation>Abblaseaustritt</translation>
</message>
<message>
<source>Coil power</source>
<extracomment>parts</extracomment>
<translation>Leistung der Heizschlange</translation>
</message>
<message>
<source>The heat that the coil passes to the store at the flow it is rated for.</source>
<extracomment>parts</extracomment>
<translation>Die Wärmeleistung, die die Heizschlange bei ihrem Nennvolumenstrom an den Speicher abgibt.</translation>
</message>
<message>
<source>Internal expansion</source>
<extracomment>parts</extracomment>
<translation>Innerer Ausdehnungsraum</translation>
</message>
<message>
<source>The store keeps a cushion of air inside in place of an expansion vessel.</source>
<extracomment>parts</extracomment>
<translation>Der Speicher hält innen ein Luftpolster anstelle eines Ausdehnungsgefäßes.</translation>
</message>
<message>
<source>Thermostat</source>
<extracomment>parts</extracomment>
<translation>Thermostat</translation>
</message>
<message>
<source>The temperature at which the store's thermostat calls no more heat.</source>
<extracomment>parts</extracomment>
<translation>Die Temperatur, bei der der Speicherthermostat keine Wärme mehr anfordert.</translation>
</message>
<message>
<source>Energy cut-out shuts</source>
<extracomment>parts</extracomment>
<translation>Sicherheitstemperaturbegrenzer schließt</translation>
</message>
<message>
<source>The motorised valve that the store's energy cut-out shuts.</source>
<extracomment>parts</extracomment>
<translation>Das Motorventil, das der Sicherheitstemperaturbegrenzer des Speichers schließt.</translation>
</message>
<message>
<source>Immersion heater</source>
<extracomment>parts</extracomment>
<translation>Elektro-Heizstab</translation>
</message>
<message>
<source>The electric heat of the immersion heater; 0 where there is none.</source>
<extracomment>parts</extracomment>
<translation>Die elektrische Leistung des Heizstabs; 0, wo keiner ist.</translation>
</message>
<message>
<source>Immersion cut-out</source>
<extracomment>parts</extracomment>
<translation>Begrenzer des Heizstabs</translation>
</message>
<message>
<source>The immersion heater has a cut-out of its own that stops it when its thermostat fails.</source>
<extracomment>parts</extracomment>
<translation>Der Heizstab hat einen eigenen Temperaturbegrenzer, der ihn abschaltet, wenn sein Thermostat versagt.</translation>
</message>
<message>
<source>Coil's highest pressure</source>
<extracomment>parts</extracomment>
<translation>Höchstdruck der Heizschlange</translation>
</message>
<message>
<source>The highest pressure that the coil is made for, from the store's data plate.</source>
<extracomment>parts</extracomment>
<translation>Der höchste Druck, für den die Heizschlange gebaut ist, laut Typenschild des Speichers.</translation>
</message>
<message>
<source>Diameter</source>
<extracomment>parts</extracomment>
<translation>Durchmesser</translation>
</message>
<message>
<source>The store's outer diameter. With its weight it tells what the floor has to carry.</source>
<extracomment>parts</extracomment>
<translation>Der Außendurchmesser des Speichers. Mit dem Gewicht ergibt er, was der Boden tragen muss.</translation>
</message>
<message>
<source>Empty weight</source>
<extracomment>parts</extracomment>
<translation>Leergewicht</translation>
</message>
<message>
<source>The store's weight without water, from its data plate.</source>
<extracomment>parts</extracomment>
<translation>Das Gewicht des Speichers ohne Wasser, laut Typenschild.</translation>
</message>
<message>
<source>kg</source>
<extracomment>parts</extracomment>
<translation>kg</translation>
</message>
<message>
<source>Coil content</source>
<extracomment>parts</extracomment>
<translation>Inhalt der Heizschlange</translation>
</message>
<message>
<source>The heating water inside the coil.</source>
<extracomment>parts</extracomment>
<translation>Das Heizwasser in der Heizschlange.</translation>
</message>
<message>
<source>Built-in relief outlet</source>
<extracomment>parts</extracomment>
<translation>Eingebauter Abblaseaustritt</translation>
</message>
<message>
<source>The bore of the joined outlet of the relief valves inside.</source>
<extracomment>parts</extracomment>
<translation>Die Weite des gemeinsamen Auslasses der eingebauten Sicherheitsventile.</translation>
</message>
<message>
<source>temperature relief</source>
<extracomment>parts</extracomment>
<translation>Temperatur-Sicherheitsventil</translation>
</message>
<message>
<source>expansion relief</source>
<extracomment>parts</extracomment>
<translation>Ausdehnungs-Sicherheitsventil</translation>
</message>
<message>
<source>Vented store</source>
<extracomment>parts</extracomment>
<translation>Offener Speicher</translation>
</message>
<message>
<source>A store fed from a cistern, whose hot side ends open over it.</source>
<extracomment>parts</extracomment>
<translation>Ein Speicher, den ein Behälter speist und dessen Warmseite offen über diesem endet.</translation>
</message>
<message>
<source>Zone valve</source>
<extracomment>parts</extracomment>
<translation>Zonenventil</translation>
</message>
<message>
<source>A motorised valve with two ports: open when its zone calls.</source>
<extracomment>parts</extracomment>
<translation>Ein Motorventil mit zwei Anschlüssen: offen, wenn sein Heizkreis Wärme fordert.</translation>
</message>
<message>
<source>Where it goes when its supply fails.</source>
<extracomment>parts</extracomment>
<translation>Wohin es geht, wenn der Strom ausfällt.</translation>
</message>
<message>
<source>Scale</source>
<extracomment>parts</extracomment>
<translation>Maßstab</translation>
</message>
<message>
<source>How many metres one square of the sheet stands for, where the drawing is to scale.</source>
<extracomment>parts</extracomment>
<translation>Wie viele Meter ein Kästchen des Blatts bedeutet, wenn die Zeichnung maßstäblich ist.</translation>
</message>
<message>
<source>m per square</source>
<extracomment>parts</extracomment>
<translation>m je Feld</translation>
</message>
<message>
<source>Flow</source>
<extracomment>parts</extracomment>
<translation>Vorlauf</translation>
</message>
<message>
<source>The temperature at which heating water leaves the heat source, as designed.</source>
<extracomment>parts</extracomment>
<translation>Die Temperatur, mit der das Heizwasser den Wärmeerzeuger laut Auslegung verlässt.</translation>
</message>
<message>
<source>Return</source>
<extracomment>parts</extracomment>
<translation>Rücklauf</translation>
</message>
<message>
<source>The temperature at which heating water comes back to the heat source, as designed.</source>
<extracomment>parts</extracomment>
<translation>Die Temperatur, mit der das Heizwasser laut Auslegung zum Wärmeerzeuger zurückkommt.</translation>
</message>
<message>
<source>Fill</source>
<extracomment>parts</extracomment>
<translation>Fülltemperatur</translation>
</message>
<message>
<source>The temperature of the water when the system is filled.</source>
<extracomment>parts</extracomment>
<translation>Die Temperatur des Wassers beim Füllen der Anlage.</translation>
</message>
<message>
<source>Fill pressure</source>
<extracomment>parts</extracomment>
<translation>Fülldruck</translation>
</message>
<message>
<source>The gauge pressure to which the cold system is filled, read at its pressure gauge.</source>
<extracomment>parts</extracomment>
<translation>Der Überdruck, auf den die kalte Anlage gefüllt wird, abgelesen an ihrem Manometer.</translation>
</message>
<message>
<source>Static height</source>
<extracomment>parts</extracomment>
<translation>Statische Höhe</translation>
</message>
<message>
<source>How far the highest point of the system stands above the expansion vessel.</source>
<extracomment>parts</extracomment>
<translation>Wie weit der höchste Punkt der Anlage über dem Ausdehnungsgefäß liegt.</translation>
</message>
<message>
<source>System content</source>
<extracomment>parts</extracomment>
<translation>Anlageninhalt</translation>
</message>
<message>
<source>All the heating water of the system. Left out, it is summed from the drawing.</source>
<extracomment>parts</extracomment>
<translation>Das gesamte Heizwasser der Anlage. Ohne Angabe wird es aus der Zeichnung summiert.</translation>
</message>
<message>
<source>Rule book</source>
<extracomment>parts</extracomment>
<translation>Regelwerk</translation>
</message>
<message>
<source>Whose limits the checks hold the drawing against. The report names it.</source>
<extracomment>parts</extracomment>
<translation>Nach wessen Grenzwerten die Zeichnung geprüft wird. Der Bericht nennt es.</translation>
</message>
<message>
<source>england</source>
<extracomment>parts</extracomment>
<translation>England</translation>
</message>
<message>
<source>european standards</source>
<extracomment>parts</extracomment>
<translation>Europäische Normen</translation>
</message>
<message>
<source>Safety margin</source>
<extracomment>parts</extracomment>
<translation>Sicherheitszuschlag</translation>
</message>
<message>
<source>What is added to the static height so that the top of the system never falls below the pressure of the air.</source>
<extracomment>parts</extracomment>
<translation>Was zur statischen Höhe hinzukommt, damit der höchste Punkt der Anlage nie unter den Luftdruck fällt.</translation>
</message>
<message>
<source>Floor carries</source>
<extracomment>parts</extracomment>
<translation>Tragfähigkeit des Bodens</translation>
</message>
<message>
<source>The load that the floor under the store carries. A structural engineer tells it.</source>
<extracomment>parts</extracomment>
<translation>Die Last, die der Boden unter dem Speicher trägt. Ein Statiker gibt sie an.</translation>
</message>
<message>
<source>kN/m²</source>
<extracomment>parts</extracomment>
<translation>kN/m²</translation>
</message>
<message>
<source>Occupants</source>
<extracomment>parts</extracomment>
<translation>Bewohner</translation>
</message>
<message>
<source>How many people live there; it decides how much hot water is needed.</source>
<extracomment>parts</extracomment>
<translation>Wie viele Menschen dort wohnen; danach richtet sich der Bedarf an Warmwasser.</translation>
</message>
<message>
<source>Dwelling</source>
<extracomment>parts</extracomment>
<translation>Wohnung</translation>
</message>
<message>
<source>A new dwelling or one that stands already: for a new one some rules are stricter.</source>
<extracomment>parts</extracomment>
<translation>Eine neue Wohnung oder eine, die schon steht: Für eine neue sind manche Regeln strenger.</translation>
</message>
<message>
<source>new</source>
<extracomment>parts</extracomment>
<translation>neu</translation>
</message>
<message>
<source>existing</source>
<extracomment>parts</extracomment>
<translation>Bestand</translation>
</message>
<message>
<source>Glycol</source>
<extracomment>parts</extracomment>
<translation>Glykol</translation>
</message>
<message>
<source>The share of antifreeze in the heating water; 0 for plain water.</source>
<extracomment>parts</extracomment>
<translation>Der Anteil Frostschutzmittel im Heizwasser; 0 bei reinem Wasser.</translation>
</message>
<message>
<source>Heat called by</source>
<extracomment>parts</extracomment>
<translation>Wärme gefordert durch</translation>
</message>
<message>
<source>End switches let the heat source and pump run only while a motor valve stands open.</source>
<extracomment>parts</extracomment>
<translation>Endschalter lassen Wärmeerzeuger und Pumpe nur laufen, solange ein Motorventil offen steht.</translation>
</message>
<message>
<source>valve end switches</source>
<extracomment>parts</extracomment>
<translation>Endschalter der Ventile</translation>
</message>
<message>
<source>programmer only</source>
<extracomment>parts</extracomment>
<translation>nur Zeitschaltuhr</translation>
</message>
<message>
<source>The tube's nominal size: its outer diameter for copper and plastic.</source>
<extracomment>parts</extracomment>
<translation>Die Nennweite des Rohrs: bei Kupfer und Kunststoff der Außendurchmesser.</translation>
</message>
<message>
<source>Material</source>
<extracomment>parts</extracomment>
<translation>Werkstoff</translation>
</message>
<message>
<source>The tube's material: it decides bore, roughness and what heat the pipe may meet.</source>
<extracomment>parts</extracomment>
<translation>Der Werkstoff des Rohrs: Er bestimmt Innendurchmesser, Rauheit und welche Hitze die Leitung verträgt.</translation>
</message>
<message>
<source>copper</source>
<extracomment>parts</extracomment>
<translation>Kupfer</translation>
</message>
<message>
<source>plastic</source>
<extracomment>parts</extracomment>
<translation>Kunststoff</translation>
</message>
<message>
<source>steel</source>
<extracomment>parts</extracomment>
<translation>Stahl</translation>
</message>
<message>
<source>Length</source>
<extracomment>parts</extracomment>
<translation>Länge</translation>
</message>
<message>
<source>The pipe's run from end to end. Left out, it is measured on a sheet with a scale.</source>
<extracomment>parts</extracomment>
<translation>Der Weg der Leitung von Ende zu Ende. Ohne Angabe wird er auf einem maßstäblichen Blatt gemessen.</translation>
</message>
<message>
<source>Rise</source>
<extracomment>parts</extracomment>
<translation>Anstieg</translation>
</message>
<message>
<source>Height gained from the first end to the second; negative falls.</source>
<extracomment>parts</extracomment>
<translation>Gewonnene Höhe vom ersten zum zweiten Ende; negativ, wo es fällt.</translation>
</message>
<message>
<source>Bends</source>
<extracomment>parts</extracomment>
<translation>Bögen</translation>
</message>
<message>
<source>Changes of direction along the pipe. Left out, they are counted on a sheet with a scale.</source>
<extracomment>parts</extracomment>
<translation>Richtungsänderungen im Verlauf der Leitung. Ohne Angabe werden sie auf einem maßstäblichen Blatt gezählt.</translation>
</message>
<message>
<source>Bore</source>
<extracomment>parts</extracomment>
<translation>Innendurchmesser</translation>
</message>
<message>
<source>Inner diameter, where the tube is not standard.</source>
<extracomment>parts</extracomment>
<translation>Innendurchmesser, wo das Rohr nicht genormt ist.</translation>
</message>
<message>
<source>Insulated</source>
<extracomment>parts</extracomment>
<translation>Gedämmt</translation>
</message>
<message>
<source>The pipe is lagged along its whole length.</source>
<extracomment>parts</extracomment>
<translation>Die Leitung ist auf ganzer Länge gedämmt.</translation>
</message>
<message>
<source>Straight drop</source>
<extracomment>parts</extracomment>
<translation>Gerades Fallstück</translation>
</message>
<message>
<source>How far it runs straight down below a tundish before its first bend.</source>
<extracomment>parts</extracomment>
<translation>Wie weit es unter einem Ablauftrichter gerade hinabführt, bevor der erste Bogen kommt.</translation>
</message>
<message>
<source>Marked fit for hot discharge</source>
<extracomment>parts</extracomment>
<translation>Als geeignet für heißes Abblasen gekennzeichnet</translation>
</message>
<message>
<source>The pipe bears the mark of one that stands scalding discharge. Without it plastic is not safe there.</source>
<extracomment>parts</extracomment>
<translation>Das Rohr trägt die Kennzeichnung, dass es siedend heißes Abblasen aushält. Ohne sie ist Kunststoff dort nicht sicher.</translation>
</message>
<message>
<source>The temperature at which the control calls no more heat.</source>
<extracomment>parts</extracomment>
<translation>Die Temperatur, bei der der Regler keine Wärme mehr anfordert.</translation>
</message>
<message>
<source>danger</source>
<extracomment>checks/words</extracomment>
<translation>Gefahr</translation>
</message>
<message>
<source>fault</source>
<extracomment>checks/words</extracomment>
<translation>Mangel</translation>
</message>
<message>
<source>advice</source>
<extracomment>checks/words</extracomment>
<translation>Empfehlung</translation>
</message>
<message>
<source>unanswered</source>
<extracomment>checks/words</extracomment>
<translation>offen</translation>
</message>
<message>
<source>heating only</source>
<extracomment>circuit</extracomment>
<translation>nur Heizung</translation>
</message>
<message>
<source>hot water only</source>
<extracomment>circuit</extracomment>
<translation>nur Warmwasser</translation>
</message>
<message>
<source>both</source>
<extracomment>circuit</extracomment>
<translation>Heizung und Warmwasser</translation>
</message>
<message>
<source>pump run-on</source>
<extracomment>circuit</extracomment>
<translation>Pumpennachlauf</translation>
</message>
<message>
<source>at rest</source>
<extracomment>circuit</extracomment>
<translation>in Ruhe</translation>
</message>
<message>
<source>power off</source>
<extracomment>circuit</extracomment>
<translation>Strom aus</translation>
</message>
<message>
<source>the numbers of this stretch are too far apart to be computed with</source>
<extracomment>circuit/solver</extracomment>
<translation>die Zahlen dieser Strecke liegen für die Rechnung zu weit auseinander</translation>
</message>
<message>
<source>Choose two parts or more to align them.</source>
<extracomment>drawing</extracomment>
<translation>Wählen Sie zwei oder mehr Bauteile, um sie auszurichten.</translation>
</message>
<message>
<source>Choose three parts or more to spread them evenly.</source>
<extracomment>drawing</extracomment>
<translation>Wählen Sie drei oder mehr Bauteile, um sie gleichmäßig zu verteilen.</translation>
</message>
<message>
<source>There is nothing called {id!r} in the drawing.</source>
<extracomment>drawing</extracomment>
<translation>In der Zeichnung gibt es nichts namens {id!r}.</translation>
</message>
<message>
<source>There is no part {id!r} in the drawing.</source>
<extracomment>drawing</extracomment>
<translation>In der Zeichnung gibt es kein Bauteil {id!r}.</translation>
</message>
<message>
<source>There is no pipe {id!r} in the drawing.</source>
<extracomment>drawing</extracomment>
<translation>In der Zeichnung gibt es kein Rohr {id!r}.</translation>
</message>
<message>
<source>There is no control {id!r} in the drawing.</source>
<extracomment>drawing</extracomment>
<translation>In der Zeichnung gibt es keinen Regler {id!r}.</translation>
</message>
<message>
<source>{name} has no port {port!r}.</source>
<extracomment>drawing</extracomment>
<translation>{name} hat keinen Anschluss {port!r}.</translation>
</message>
<message>
<source>{owner} has no field {name!r}.</source>
<extracomment>drawing</extracomment>
<translation>{owner} hat kein Feld {name!r}.</translation>
</message>
<message>
<source>It is one of {choices}.</source>
<extracomment>drawing</extracomment>
<translation>Zur Wahl stehen: {choices}.</translation>
</message>
<message>
<source>{label}: {value!r} cannot be set.{options}</source>
<extracomment>drawing</extracomment>
<translation>{label}: {value!r} ist nicht möglich.{options}</translation>
</message>
<message>
<source>{label}: {value!r} is not a number.</source>
<extracomment>drawing</extracomment>
<translation>{label}: {value!r} ist keine Zahl.</translation>
</message>
<message>
<source>{label} must be more than {above:g}{unit}.</source>
<extracomment>drawing</extracomment>
<translation>{label}: Der Wert muss größer sein als {above:g}{unit}.</translation>
</message>
<message>
<source>{label} must be at least {least:g}{unit}.</source>
<extracomment>drawing</extracomment>
<translation>{label}: Der Wert muss mindestens {least:g}{unit} betragen.</translation>
</message>
<message>
<source>{label} must be at most {most:g}{unit}.</source>
<extracomment>drawing</extracomment>
<translation>{label}: Der Wert darf höchstens {most:g}{unit} betragen.</translation>
</message>
<message>
<source>A {part} is a control: it stands on no pipe.</source>
<extracomment>drawing</extracomment>
<translation>{part} ist ein Regler: Er sitzt an keinem Rohr.</translation>
</message>
<message>
<source>A part is turned by 0, 90, 180 or 270 degrees.</source>
<extracomment>drawing</extracomment>
<translation>Ein Bauteil wird um 0, 90, 180 oder 270 Grad gedreht.</translation>
</message>
<message>
<source>A pipe has no label.</source>
<extracomment>drawing</extracomment>
<translation>Ein Rohr hat keine Bezeichnung.</translation>
</message>
<message>
<source>A {part} is no control.</source>
<extracomment>drawing</extracomment>
<translation>{part} ist kein Regler.</translation>
</message>
<message>
<source>A control has no field {name!r}.</source>
<extracomment>drawing</extracomment>
<translation>Ein Regler hat kein Feld {name!r}.</translation>
</message>
<message>
<source>Pipe {id}</source>
<extracomment>drawing</extracomment>
<translation>Rohr {id}</translation>
</message>
<message>
<source>{name} has no pipe on its {port}.</source>
<extracomment>drawing</extracomment>
<translation>{name} hat kein Rohr am Anschluss {port}.</translation>
</message>
<message>
<source>A {part} cannot be cut into a pipe.</source>
<extracomment>drawing</extracomment>
<translation>In ein Rohr lässt sich das nicht einsetzen: {part}.</translation>
</message>
<message>
<source>{name} has no two ports in one line.</source>
<extracomment>drawing</extracomment>
<translation>{name} hat keine zwei Anschlüsse auf einer Linie.</translation>
</message>
<message>
<source>A pipe cannot end where it begins.</source>
<extracomment>drawing</extracomment>
<translation>Ein Rohr kann nicht enden, wo es beginnt.</translation>
</message>
<message>
<source>A pipe cannot end on itself.</source>
<extracomment>drawing</extracomment>
<translation>Ein Rohr kann nicht auf sich selbst enden.</translation>
</message>
<message>
<source>{name} has a pipe on it already.</source>
<extracomment>drawing</extracomment>
<translation>{name} hat schon ein Rohr.</translation>
</message>
<message>
<source>{name} has a pipe on its port {port} already.</source>
<extracomment>drawing</extracomment>
<translation>{name} hat am Anschluss {port} schon ein Rohr.</translation>
</message>
<message>
<source>A pipe's ends are 0 and 1.</source>
<extracomment>drawing</extracomment>
<translation>Die Enden eines Rohrs sind 0 und 1.</translation>
</message>
<message>
<source>Nothing found by 1 check.</source>
<extracomment>folders</extracomment>
<translation>Von 1 Prüfung nichts gefunden.</translation>
</message>
<message>
<source>Nothing found by {count} checks.</source>
<extracomment>folders</extracomment>
<translation>Von {count} Prüfungen nichts gefunden.</translation>
</message>
<message>
<source>{findings}; {silent}.</source>
<extracomment>folders</extracomment>
<translation>{findings}; {silent}.</translation>
</message>
<message>
<source>1 finding</source>
<extracomment>folders</extracomment>
<translation>1 Befund</translation>
</message>
<message>
<source>{count} findings</source>
<extracomment>folders</extracomment>
<translation>{count} Befunde</translation>
</message>
<message>
<source>1 check found nothing</source>
<extracomment>folders</extracomment>
<translation>1 Prüfung hat nichts gefunden</translation>
</message>
<message>
<source>{count} checks found nothing</source>
<extracomment>folders</extracomment>
<translation>{count} Prüfungen haben nichts gefunden</translation>
</message>
<message>
<source>All drawings</source>
<extracomment>folders</extracomment>
<translation>Alle Zeichnungen</translation>
</message>
<message>
<source>{time} after the start {part} lifts{where}; after the remedy it does not.</source>
<extracomment>lessons</extracomment>
<translation>{time} nach dem Start öffnet {part}{where}; nach der Abhilfe nicht mehr.</translation>
</message>
<message>
<source>{time} after the start the overheat cut-out of {part} trips{where}; after the remedy it does not.</source>
<extracomment>lessons</extracomment>
<translation>{time} nach dem Start löst der Sicherheitstemperaturbegrenzer von {part} aus{where}; nach der Abhilfe nicht mehr.</translation>
</message>
<message>
<source>{time} after the start the pressure passes what {part} is made for{where}; after the remedy it does not.</source>
<extracomment>lessons</extracomment>
<translation>{time} nach dem Start übersteigt der Druck, wofür {part} gebaut ist{where}; nach der Abhilfe nicht mehr.</translation>
</message>
<message>
<source>{time} after the start the pressure at {part} is gone{where}, and air can be drawn in; after the remedy it is not.</source>
<extracomment>lessons</extracomment>
<translation>{time} nach dem Start ist der Druck an {part} weg{where}, und Luft kann angesaugt werden; nach der Abhilfe nicht mehr.</translation>
</message>
<message>
<source>{time} after the start the water at {part} is about to boil{where}; after the remedy it is not.</source>
<extracomment>lessons</extracomment>
<translation>{time} nach dem Start siedet das Wasser in {part} gleich{where}; nach der Abhilfe nicht mehr.</translation>
</message>
<message>
<source>{time} after the start the pressure at {part} passes 100 bar{where}: something has burst long before. After the remedy it does not.</source>
<extracomment>lessons</extracomment>
<translation>{time} nach dem Start übersteigt der Druck an {part} 100 bar{where}: Längst ist etwas geborsten. Nach der Abhilfe nicht mehr.</translation>
</message>
<message>
<source>with {valves} shut</source>
<extracomment>lessons</extracomment>
<translation>mit {valves} geschlossen</translation>
</message>
<message>
<source>once {vessels} has lost its gas</source>
<extracomment>lessons</extracomment>
<translation>ohne Gas in {vessels}</translation>
</message>
<message>
<source>{part} has no way left to its {lacks}{where}; after the remedy it has.</source>
<extracomment>lessons</extracomment>
<translation>{part} hat{where} keinen Weg mehr zu: {lacks}; nach der Abhilfe hat es einen.</translation>
</message>
<message>
<source>As the pump starts ({situation}) the pressure in {pipe} falls to {before} bar, below that of the air outside, and air can be drawn in; after the remedy no pipe has less than {after} bar.</source>
<extracomment>lessons</extracomment>
<translation>Wenn die Pumpe anläuft ({situation}), fällt der Druck in {pipe} auf {before} bar, unter den der Außenluft, und es kann Luft angesaugt werden; nach der Abhilfe hat keine Leitung weniger als {after} bar.</translation>
</message>
<message>
<source>the safety valve in {part}</source>
<extracomment>lessons</extracomment>
<translation>das Sicherheitsventil in {part}</translation>
</message>
<message>
<source>Within {minutes} minutes the pressure at {part} comes to {before} bar{where}; after the remedy to {after} bar.</source>
<extracomment>lessons</extracomment>
<translation>Binnen {minutes} Minuten steigt der Druck an {part}{where} auf {before} bar; nach der Abhilfe auf {after} bar.</translation>
</message>
<message>
<source>The water at the flow of {part} ({situation}) gets {before} °C hot; after the remedy {after} °C.</source>
<extracomment>lessons</extracomment>
<translation>Das Wasser am Vorlauf von {part} ({situation}) wird {before} °C heiß; nach der Abhilfe {after} °C.</translation>
</message>
<message>
<source>{minutes} min {rest} s</source>
<extracomment>lessons</extracomment>
<translation>{minutes} min {rest} s</translation>
</message>
<message>
<source>Nothing is joined to {name} there.</source>
<extracomment>lessons</extracomment>
<translation>An {name} ist dort nichts angeschlossen.</translation>
</message>
<message>
<source>{outlet} takes its cold from the main unreduced, at {bar} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>{outlet} nimmt das Kaltwasser ungemindert vom Hausanschluss, mit {bar} bar.</translation>
</message>
<message>
<source>{valve} lets {hot} °C into {bath}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} lässt {hot} °C zu {bath}.</translation>
</message>
<message>
<source>{bypass} is set to {high} kPa.</source>
<extracomment>lessons/faults</extracomment>
<translation>{bypass} ist auf {high} kPa eingestellt.</translation>
</message>
<message>
<source>{part} stands {above} m above the water in {cistern}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{part} steht {above} m über dem Wasser in {cistern}.</translation>
</message>
<message>
<source>{cistern} holds 18 l over a circuit of more than {rooms} l.</source>
<extracomment>lessons/faults</extracomment>
<translation>{cistern} fasst 18 l, und der Kreis enthält mehr als {rooms} l.</translation>
</message>
<message>
<source>{cistern} feeds the heating too.</source>
<extracomment>lessons/faults</extracomment>
<translation>{cistern} speist auch die Heizung.</translation>
</message>
<message>
<source>The coil of {store} is made for {bar} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Heizschlange von {store} ist für {bar} bar gebaut.</translation>
</message>
<message>
<source>{check} is left out.</source>
<extracomment>lessons/faults</extracomment>
<translation>{check} ist weggelassen.</translation>
</message>
<message>
<source>{valve} takes its cold from behind {check}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} nimmt das Kaltwasser hinter {check} ab.</translation>
</message>
<message>
<source>{valve} lets nothing back into {cistern}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} lässt nichts nach {cistern} zurück.</translation>
</message>
<message>
<source>{valve} can shut the cold feed from {cistern}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann die Speiseleitung von {cistern} schließen.</translation>
</message>
<message>
<source>Two connections of {thing} are changed over.</source>
<extracomment>lessons/faults</extracomment>
<translation>Zwei Anschlüsse von {thing} sind vertauscht.</translation>
</message>
<message>
<source>{source} needs {least} l always going round.</source>
<extracomment>lessons/faults</extracomment>
<translation>Durch {source} müssen immer {least} l umlaufen.</translation>
</message>
<message>
<source>The heating is filled through {valve} and nothing else.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Heizung wird durch {valve} gefüllt und durch nichts sonst.</translation>
</message>
<message>
<source>The cut-out of {store} shuts {valve}.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer von {store} schließt {valve}.</translation>
</message>
<message>
<source>The discharge of {valve} is closed by a plug.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Abblaseleitung von {valve} ist mit einem Stopfen verschlossen.</translation>
</message>
<message>
<source>The discharge of {valve} goes through {size} mm.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Abblaseleitung von {valve} geht durch {size} mm.</translation>
</message>
<message>
<source>{tap} can shut the discharge of {valve}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{tap} kann die Abblaseleitung von {valve} schließen.</translation>
</message>
<message>
<source>The discharge of {valve} goes through plastic.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Abblaseleitung von {valve} geht durch Kunststoff.</translation>
</message>
<message>
<source>The discharge of {valve} goes up to its end.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Abblaseleitung von {valve} steigt zu ihrem Ende an.</translation>
</message>
<message>
<source>The discharge of {valve} is {long} m long there, with {bends} bends.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Abblaseleitung von {valve} ist dort {long} m lang und hat {bends} Bögen.</translation>
</message>
<message>
<source>The return of {emitter} is joined to a flow.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Rücklauf von {emitter} ist an einem Vorlauf angeschlossen.</translation>
</message>
<message>
<source>{part} gets its water through {long} m of {size} mm.</source>
<extracomment>lessons/faults</extracomment>
<translation>{part} bekommt sein Wasser durch {long} m Rohr von {size} mm.</translation>
</message>
<message>
<source>{valve} is left out.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} ist weggelassen.</translation>
</message>
<message>
<source>{link} was left connected.</source>
<extracomment>lessons/faults</extracomment>
<translation>{link} blieb verbunden.</translation>
</message>
<message>
<source>{link} has no double check valve.</source>
<extracomment>lessons/faults</extracomment>
<translation>{link} hat keinen doppelten Rückflussverhinderer.</translation>
</message>
<message>
<source>{thing} is fitted the wrong way round.</source>
<extracomment>lessons/faults</extracomment>
<translation>{thing} ist verkehrt herum eingebaut.</translation>
</message>
<message>
<source>{zone} is a floor for {most} °C at most, and gets the full flow.</source>
<extracomment>lessons/faults</extracomment>
<translation>{zone} ist ein Fußboden für höchstens {most} °C und bekommt den vollen Vorlauf.</translation>
</message>
<message>
<source>{control} is gone: nothing tells when its rooms are warm.</source>
<extracomment>lessons/faults</extracomment>
<translation>{control} fehlt: Nichts sagt, wann die Räume warm sind.</translation>
</message>
<message>
<source>The programmer calls the heat source, whatever the thermostats say.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Zeitschaltuhr fordert den Wärmeerzeuger an, was die Thermostate auch sagen.</translation>
</message>
<message>
<source>{source} cannot be switched off, and nothing takes its heat when the pump stops.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} lässt sich nicht abschalten, und nichts nimmt die Wärme ab, wenn die Pumpe steht.</translation>
</message>
<message>
<source>The rise of {pipe} is written as {wrong} m, which its ends do not bear out.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Anstieg von {pipe} ist mit {wrong} m aufgeschrieben, was die Enden nicht bestätigen.</translation>
</message>
<message>
<source>The thermostat of {store} is set to {hot} °C.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Thermostat von {store} ist auf {hot} °C eingestellt.</translation>
</message>
<message>
<source>The immersion heater of {store} has no cut-out.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Elektro-Heizstab von {store} hat keinen Begrenzer.</translation>
</message>
<message>
<source>The end of {pipe} lies just short of {part}.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Ende von {pipe} liegt kurz vor {part}.</translation>
</message>
<message>
<source>The pipe below {tundish} bends after {drop} m.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Rohr unter {tundish} biegt nach {drop} m ab.</translation>
</message>
<message>
<source>There is no bypass: with the zones shut water has no way round.</source>
<extracomment>lessons/faults</extracomment>
<translation>Es gibt kein Überströmventil: Sind die Heizkreise zu, hat das Wasser keinen Umweg.</translation>
</message>
<message>
<source>{valve} can shut {bypass}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {bypass} absperren.</translation>
</message>
<message>
<source>{rail} can be shut, and was the way round.</source>
<extracomment>lessons/faults</extracomment>
<translation>{rail} kann geschlossen werden und war der Umweg.</translation>
</message>
<message>
<source>{source} has no bypass built in, and there is no other.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} hat kein Überströmventil eingebaut, und ein anderes gibt es nicht.</translation>
</message>
<message>
<source>A tee by {part} has nothing on its branch.</source>
<extracomment>lessons/faults</extracomment>
<translation>Ein T-Stück bei {part} hat nichts an seinem Abzweig.</translation>
</message>
<message>
<source>{source} has no open vent.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} hat keine offene Entlüftung.</translation>
</message>
<message>
<source>{valve} stands in {vent}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} sitzt in {vent}.</translation>
</message>
<message>
<source>{valve} can shut {vent}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {vent} absperren.</translation>
</message>
<message>
<source>{vent} is run in 15 mm.</source>
<extracomment>lessons/faults</extracomment>
<translation>{vent} ist in 15 mm ausgeführt.</translation>
</message>
<message>
<source>{source} has no high limit.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} hat keinen Sicherheitstemperaturbegrenzer.</translation>
</message>
<message>
<source>The high limit of {source} resets itself.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer von {source} stellt sich selbst zurück.</translation>
</message>
<message>
<source>The pipe at {source} is plastic.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Rohr an {source} ist aus Kunststoff.</translation>
</message>
<message>
<source>Nothing stops {pump} when its valve shuts.</source>
<extracomment>lessons/faults</extracomment>
<translation>Nichts hält {pump} an, wenn das Ventil dazu schließt.</translation>
</message>
<message>
<source>{pump} stands between {vent} and the feed of {feed}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{pump} sitzt zwischen {vent} und der Speisung von {feed}.</translation>
</message>
<message>
<source>{vent} ends {low} mm above the water.</source>
<extracomment>lessons/faults</extracomment>
<translation>{vent} endet {low} mm über dem Wasserspiegel.</translation>
</message>
<message>
<source>{pump} makes {low} m of head only.</source>
<extracomment>lessons/faults</extracomment>
<translation>{pump} bringt nur {low} m Förderhöhe.</translation>
</message>
<message>
<source>The pump in {source} makes {low} m of head only.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Pumpe in {source} bringt nur {low} m Förderhöhe.</translation>
</message>
<message>
<source>{valve} can shut {relief} off.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {relief} absperren.</translation>
</message>
<message>
<source>{valve} is teed off a pipe of {store}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} ist an einem Rohr von {store} abgezweigt.</translation>
</message>
<message>
<source>{relief} opens at {bar} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>{relief} öffnet bei {bar} bar.</translation>
</message>
<message>
<source>There is no safety valve on the heating water.</source>
<extracomment>lessons/faults</extracomment>
<translation>Am Heizwasser sitzt kein Sicherheitsventil.</translation>
</message>
<message>
<source>{safety} stands behind {strainer}, which can block.</source>
<extracomment>lessons/faults</extracomment>
<translation>{safety} sitzt hinter {strainer}, und dort kann es verstopfen.</translation>
</message>
<message>
<source>The safety valve is {long} m of pipe away from {source}.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Sicherheitsventil ist {long} m Rohr von {source} entfernt.</translation>
</message>
<message>
<source>{valve} can shut {safety} off.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {safety} absperren.</translation>
</message>
<message>
<source>{valve} lifts only at {high} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} öffnet erst bei {high} bar.</translation>
</message>
<message>
<source>The safety valve in {valve} lifts only at {high} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Sicherheitsventil in {valve} öffnet erst bei {high} bar.</translation>
</message>
<message>
<source>{valve} can let out {small} kW only.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann nur {small} kW ablassen.</translation>
</message>
<message>
<source>The pipe that several tundishes share to {end} is {size} mm.</source>
<extracomment>lessons/faults</extracomment>
<translation>Die Leitung, die mehrere Ablauftrichter bis {end} gemeinsam haben, misst {size} mm.</translation>
</message>
<message>
<source>{source} needs {least} l/min.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} braucht {least} l/min.</translation>
</message>
<message>
<source>{control} is left out.</source>
<extracomment>lessons/faults</extracomment>
<translation>{control} ist weggelassen.</translation>
</message>
<message>
<source>{store} has no open vent.</source>
<extracomment>lessons/faults</extracomment>
<translation>{store} hat keine offene Entlüftung.</translation>
</message>
<message>
<source>{valve} can part {store} from {vent}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {store} von {vent} trennen.</translation>
</message>
<message>
<source>The store has no vessel: {vessel} is left out.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Speicher hat kein Ausdehnungsgefäß: {vessel} ist weggelassen.</translation>
</message>
<message>
<source>{valve} can shut {vessel} off.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {vessel} absperren.</translation>
</message>
<message>
<source>{vessel} is charged to {bar} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>{vessel} hat einen Vordruck von {bar} bar.</translation>
</message>
<message>
<source>{vessel} holds {litres} l.</source>
<extracomment>lessons/faults</extracomment>
<translation>{vessel} fasst {litres} l.</translation>
</message>
<message>
<source>{store} has no temperature relief valve.</source>
<extracomment>lessons/faults</extracomment>
<translation>{store} hat kein Temperatur-Sicherheitsventil.</translation>
</message>
<message>
<source>No tundish shows when {valve} discharges.</source>
<extracomment>lessons/faults</extracomment>
<translation>Kein Ablauftrichter zeigt, wenn {valve} abbläst.</translation>
</message>
<message>
<source>{tundish} is out of sight.</source>
<extracomment>lessons/faults</extracomment>
<translation>{tundish} ist außer Sicht.</translation>
</message>
<message>
<source>The pipe from {valve} to {tundish} is {long} m long.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Rohr von {valve} zu {tundish} ist {long} m lang.</translation>
</message>
<message>
<source>{source} cannot be switched off, and it heats {store}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} lässt sich nicht abschalten und heizt {store}.</translation>
</message>
<message>
<source>{source} cannot be switched off, and its water is sealed.</source>
<extracomment>lessons/faults</extracomment>
<translation>{source} lässt sich nicht abschalten, und der Kreis ist geschlossen.</translation>
</message>
<message>
<source>{apart} m of pipe lie between the tees of {vent} and of {feed}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{apart} m Rohr liegen zwischen den T-Stücken von {vent} und {feed}.</translation>
</message>
<message>
<source>{vent} ends over {cistern}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{vent} endet über {cistern}.</translation>
</message>
<message>
<source>{vent} falls by {down} m before it rises.</source>
<extracomment>lessons/faults</extracomment>
<translation>{vent} fällt um {down} m, bevor es steigt.</translation>
</message>
<message>
<source>The main is joined to {store} where {cistern} stood.</source>
<extracomment>lessons/faults</extracomment>
<translation>Der Hausanschluss ist dort mit {store} verbunden, wo {cistern} stand.</translation>
</message>
<message>
<source>{valve} can part {source} from its vessel.</source>
<extracomment>lessons/faults</extracomment>
<translation>{valve} kann {source} vom Ausdehnungsgefäß trennen.</translation>
</message>
<message>
<source>{pump} stands right before the tee of {vessel}.</source>
<extracomment>lessons/faults</extracomment>
<translation>{pump} sitzt unmittelbar vor dem T-Stück von {vessel}.</translation>
</message>
<message>
<source>{part} is charged to {wrong} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>{part} hat einen Vordruck von {wrong} bar.</translation>
</message>
<message>
<source>The vessel in {part} is charged to {wrong} bar.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Ausdehnungsgefäß in {part} hat einen Vordruck von {wrong} bar.</translation>
</message>
<message>
<source>{part} holds {small} l only.</source>
<extracomment>lessons/faults</extracomment>
<translation>{part} fasst nur {small} l.</translation>
</message>
<message>
<source>The vessel in {part} holds {small} l only.</source>
<extracomment>lessons/faults</extracomment>
<translation>Das Ausdehnungsgefäß in {part} fasst nur {small} l.</translation>
</message>
<message>
<source>Build it as it was before the slip.</source>
<extracomment>lessons</extracomment>
<translation>Es so bauen, wie es vor dem Fehler war.</translation>
</message>
<message>
<source>expansion vessel</source>
<extracomment>operating</extracomment>
<translation>Ausdehnungsgefäß</translation>
</message>
<message>
<source>open vent</source>
<extracomment>operating</extracomment>
<translation>offene Entlüftung</translation>
</message>
<message>
<source>cold feed</source>
<extracomment>operating</extracomment>
<translation>Speiseleitung</translation>
</message>
<message>
<source>relief valve</source>
<extracomment>operating</extracomment>
<translation>Abblaseventil</translation>
</message>
<message>
<source>as drawn</source>
<extracomment>operating</extracomment>
<translation>wie gezeichnet</translation>
</message>
<message>
<source>no heat source or exchanger heats any water in this drawing</source>
<extracomment>operating</extracomment>
<translation>kein Wärmeerzeuger oder Wärmeübertrager erwärmt in dieser Zeichnung Wasser</translation>
</message>
<message>
<source>the water has glycol in it, and the formulas hold for water without</source>
<extracomment>operating</extracomment>
<translation>das Wasser enthält Glykol, und die Formeln gelten für Wasser ohne</translation>
</message>
<message>
<source>{celsius:g} °C is beyond the formulas for water, 0 to {most_c:g} °C</source>
<extracomment>operating</extracomment>
<translation>{celsius:g} °C liegt außerhalb der Formeln für Wasser, 0 bis {most_c:g} °C</translation>
</message>
<message>
<source>Flows cannot be worked out: {refused}.</source>
<extracomment>operating</extracomment>
<translation>Die Volumenströme lassen sich nicht ausrechnen: {refused}.</translation>
</message>
<message>
<source>Flows cannot be worked out: {error}.</source>
<extracomment>operating</extracomment>
<translation>Die Volumenströme lassen sich nicht ausrechnen: {error}.</translation>
</message>
<message>
<source>discharge</source>
<extracomment>picture</extracomment>
<translation>Abblasen</translation>
</message>
<message>
<source>vent and feed</source>
<extracomment>picture</extracomment>
<translation>Entlüftung und Speisung</translation>
</message>
<message>
<source>standard tube</source>
<extracomment>report</extracomment>
<translation>genormtes Rohr</translation>
</message>
<message>
<source>This program helps competent people; it replaces none. A drawing without findings is not a certificate.</source>
<extracomment>report</extracomment>
<translation>Dieses Programm hilft Fachkundigen; es ersetzt keinen. Eine Zeichnung ohne Befunde ist keine Bescheinigung.</translation>
</message>
<message>
<source>Work on gas, on unvented hot water and on mains wiring is for people qualified and registered to do it where the law asks.</source>
<extracomment>report</extracomment>
<translation>Arbeiten an Gas, an geschlossenen Warmwasserspeichern und an der Stromversorgung sind Sache von Leuten, die dafür befähigt und, wo das Gesetz es verlangt, eingetragen sind.</translation>
</message>
<message>
<source>Local codes and the makers’ instructions come first, before anything that stands in this document.</source>
<extracomment>report</extracomment>
<translation>Örtliche Vorschriften und die Anleitungen der Hersteller gehen allem vor, was in diesem Dokument steht.</translation>
</message>
<message>
<source>Scalding, stored pressure and electricity can injure or kill. Isolate electricity, gas and water, and put up notices, before the circuit is opened.</source>
<extracomment>report</extracomment>
<translation>Verbrühung, gespeicherter Druck und Strom können verletzen oder töten. Trennen Sie Strom, Gas und Wasser und bringen Sie Hinweise an, bevor der Kreis geöffnet wird.</translation>
</message>
<message>
<source>Relief valves may discharge at any time, near boiling: keep the ends of their pipes clear of people. Never plug, shut or narrow a relief, a vent or a cold feed.</source>
<extracomment>report</extracomment>
<translation>Sicherheitsventile können jederzeit fast siedendes Wasser abblasen: Halten Sie die Enden ihrer Rohre frei von Personen. Verschließen, sperren oder verengen Sie nie ein Sicherheitsventil, eine Entlüftung oder eine Speiseleitung.</translation>
</message>
<message>
<source>What the floor carries is for a competent person to confirm.</source>
<extracomment>report</extracomment>
<translation>Was der Boden trägt, hat ein Fachkundiger zu bestätigen.</translation>
</message>
<message>
<source>This program helps competent people; it replaces none. Work on gas, on unvented hot water and on mains wiring is for people qualified and registered to do it where the law asks. Local codes and the makers’ instructions come first. Scalding, stored pressure and electricity can injure or kill. A drawing without findings is not a certificate.</source>
<extracomment>report</extracomment>
<translation>Dieses Programm hilft Fachkundigen; es ersetzt keinen. Arbeiten an Gas, an geschlossenen Warmwasserspeichern und an der Stromversorgung sind Sache von Leuten, die dafür befähigt und, wo das Gesetz es verlangt, eingetragen sind. Örtliche Vorschriften und die Anleitungen der Hersteller gehen vor. Verbrühung, gespeicherter Druck und Strom können verletzen oder töten. Eine Zeichnung ohne Befunde ist keine Bescheinigung.</translation>
</message>
<message>
<source>Contents</source>
<extracomment>report/document</extracomment>
<translation>Inhalt</translation>
</message>
<message>
<source>to tick</source>
<extracomment>report/document</extracomment>
<translation>zum Abhaken</translation>
</message>
<message>
<source>The drawing, to be scrolled</source>
<extracomment>report/document</extracomment>
<translation>Die Zeichnung, zum Verschieben</translation>
</message>
<message>
<source>Page {number} of {count}</source>
<extracomment>report/document</extracomment>
<translation>Seite {number} von {count}</translation>
</message>
<message>
<source>Nothing of this drawing is on a sheet</source>
<extracomment>report/document</extracomment>
<translation>Von dieser Zeichnung steht nichts auf einem Blatt</translation>
</message>
<message>
<source>{count} {grade}</source>
<extracomment>report/document</extracomment>
<translation>{count} {grade}</translation>
</message>
<message>
<source>1 check could not judge; see the report.</source>
<extracomment>report/document</extracomment>
<translation>1 Prüfung konnte nicht urteilen; siehe den Bericht.</translation>
</message>
<message>
<source>{count} checks could not judge; see the report.</source>
<extracomment>report/document</extracomment>
<translation>{count} Prüfungen konnten nicht urteilen; siehe den Bericht.</translation>
</message>
<message>
<source>Not shown, since not placed on the sheet: {parts}.</source>
<extracomment>report/document</extracomment>
<translation>Nicht gezeigt, da nicht auf dem Blatt: {parts}.</translation>
</message>
<message>
<source>{file} · {day} · {program} · rule book {rule_book}</source>
<extracomment>report/document</extracomment>
<translation>{file} · {day} · {program} · Regelwerk {rule_book}</translation>
</message>
<message>
<source>Local codes and the makers’ instructions come first. A drawing without findings is not a certificate.</source>
<extracomment>report/document</extracomment>
<translation>Örtliche Vorschriften und die Anleitungen der Hersteller gehen vor. Eine Zeichnung ohne Befunde ist keine Bescheinigung.</translation>
</message>
<message>
<source>Formula</source>
<extracomment>report/document</extracomment>
<translation>Formel</translation>
</message>
<message>
<source>Not worked</source>
<extracomment>report/document</extracomment>
<translation>Nicht berechnet</translation>
</message>
<message>
<source>Rests on</source>
<extracomment>report/document</extracomment>
<translation>Beruht auf</translation>
</message>
<message>
<source>not known: settle it before this is tested</source>
<extracomment>report/document</extracomment>
<translation>nicht bekannt: vor dieser Prüfung klären</translation>
</message>
<message>
<source>common practice, no source</source>
<extracomment>report/document</extracomment>
<translation>übliche Praxis, ohne Quelle</translation>
</message>
<message>
<source>{value} {unit}</source>
<extracomment>report/document</extracomment>
<translation>{value} {unit}</translation>
</message>
<message>
<source>Before water is let in</source>
<extracomment>report/document</extracomment>
<translation>Bevor Wasser eingelassen wird</translation>
</message>
<message>
<source>Filling</source>
<extracomment>report/document</extracomment>
<translation>Füllen</translation>
</message>
<message>
<source>Safety devices and discharge</source>
<extracomment>report/document</extracomment>
<translation>Sicherheitseinrichtungen und Abblasen</translation>
</message>
<message>
<source>Controls and interlock</source>
<extracomment>report/document</extracomment>
<translation>Regelung und Verriegelung</translation>
</message>
<message>
<source>Balancing and bypass</source>
<extracomment>report/document</extracomment>
<translation>Abgleich und Überströmventil</translation>
</message>
<message>
<source>At the taps</source>
<extracomment>report/document</extracomment>
<translation>An den Zapfstellen</translation>
</message>
<message>
<source>Handing over</source>
<extracomment>report/document</extracomment>
<translation>Übergabe</translation>
</message>
<message>
<source>Cold, dry, and with the electricity isolated.</source>
<extracomment>report/document</extracomment>
<translation>Kalt, trocken und bei abgeschaltetem Strom.</translation>
</message>
<message>
<source>Readings cold and at rest, before the heat source is fired.</source>
<extracomment>report/document</extracomment>
<translation>Ablesungen kalt und in Ruhe, bevor der Wärmeerzeuger gezündet wird.</translation>
</message>
<message>
<source>By a person qualified for unvented hot water where there is such a store. Keep clear of the ends.</source>
<extracomment>report/document</extracomment>
<translation>Bei einem geschlossenen Warmwasserspeicher durch jemanden, der dafür befähigt ist. Von den Enden der Leitungen fernbleiben.</translation>
</message>
<message>
<source>One control at a time, each from calling to satisfied.</source>
<extracomment>report/document</extracomment>
<translation>Ein Regler nach dem anderen, jeder von der Anforderung bis zur Zufriedenheit.</translation>
</message>
<message>
<source>Hot, with thermostatic heads open, after dirt has been filtered out.</source>
<extracomment>report/document</extracomment>
<translation>Warm, mit offenen Thermostatköpfen, nachdem der Schmutz herausgefiltert ist.</translation>
</message>
<message>
<source>With the store at its temperature. Water above 60 °C scalds in seconds.</source>
<extracomment>report/document</extracomment>
<translation>Wenn der Speicher seine Temperatur hat. Wasser über 60 °C verbrüht in Sekunden.</translation>
</message>
<message>
<source>With the user at the plant.</source>
<extracomment>report/document</extracomment>
<translation>Mit dem Betreiber an der Anlage.</translation>
</message>
<message>
<source>An aid to competent people. A drawing without findings is not a certificate.</source>
<extracomment>report/document</extracomment>
<translation>Eine Hilfe für Fachkundige. Eine Zeichnung ohne Befunde ist keine Bescheinigung.</translation>
</message>
<message>
<source>given</source>
<extracomment>report/document</extracomment>
<translation>angegeben</translation>
</message>
<message>
<source>{how}: {field}</source>
<extracomment>report/document</extracomment>
<translation>{how}: {field}</translation>
</message>
<message>
<source>from the figure {title}</source>
<extracomment>report/document</extracomment>
<translation>aus der Berechnung „{title}“</translation>
</message>
<message>
<source>usual value, {source}</source>
<extracomment>report/document</extracomment>
<translation>üblicher Wert, {source}</translation>
</message>
<message>
<source>usual value,</source>
<extracomment>report/document</extracomment>
<translation>üblicher Wert,</translation>
</message>
<message>
<source>rule book {book}: {source}</source>
<extracomment>report/document</extracomment>
<translation>Regelwerk {book}: {source}</translation>
</message>
<message>
<source>Where it is: {names}</source>
<extracomment>report/document</extracomment>
<translation>Wo es ist: {names}</translation>
</message>
<message>
<source>{valve}, {how}</source>
<extracomment>report/document</extracomment>
<translation>{valve}, {how}</translation>
</message>
<message>
<source>{id} (no longer in the drawing)</source>
<extracomment>report/document</extracomment>
<translation>{id} (nicht mehr in der Zeichnung)</translation>
</message>
<message>
<source>Accepted by {who}</source>
<extracomment>report/document</extracomment>
<translation>Hingenommen von {who}</translation>
</message>
<message>
<source>somebody who gave no name</source>
<extracomment>report/document</extracomment>
<translation>jemandem ohne Namen</translation>
</message>
<message>
<source>on {date}</source>
<extracomment>report/document</extracomment>
<translation>am {date}</translation>
</message>
<message>
<source>, until {date}</source>
<extracomment>report/document</extracomment>
<translation>, bis {date}</translation>
</message>
<message>
<source>: {reason}</source>
<extracomment>report/document</extracomment>
<translation>: {reason}</translation>
</message>
<message>
<source>; no reason is given</source>
<extracomment>report/document</extracomment>
<translation>; ein Grund ist nicht angegeben</translation>
</message>
<message>
<source>holds good</source>
<extracomment>report/document</extracomment>
<translation>gilt</translation>
</message>
<message>
<source>has run out</source>
<extracomment>report/document</extracomment>
<translation>ist abgelaufen</translation>
</message>
<message>
<source>matches no finding here</source>
<extracomment>report/document</extracomment>
<translation>passt hier zu keinem Befund</translation>
</message>
<message>
<source>holds, and the danger counts all the same</source>
<extracomment>report/document</extracomment>
<translation>gilt, und die Gefahr zählt trotzdem</translation>
</message>
<message>
<source>{value} (usual value, not given)</source>
<extracomment>report/document</extracomment>
<translation>{value} (üblicher Wert, nicht angegeben)</translation>
</message>
<message>
<source>No document: see above.</source>
<extracomment>report/document</extracomment>
<translation>Kein Dokument: siehe oben.</translation>
</message>
<message>
<source>File</source>
<extracomment>report/document</extracomment>
<translation>Datei</translation>
</message>
<message>
<source>Why</source>
<extracomment>report/document</extracomment>
<translation>Warum</translation>
</message>
<message>
<source>Without a document</source>
<extracomment>report/document</extracomment>
<translation>Ohne Dokument</translation>
</message>
<message>
<source>Made on</source>
<extracomment>report/document</extracomment>
<translation>Erstellt am</translation>
</message>
<message>
<source>Made with</source>
<extracomment>report/document</extracomment>
<translation>Erstellt mit</translation>
</message>
<message>
<source>Rule books</source>
<extracomment>report/document</extracomment>
<translation>Regelwerke</translation>
</message>
<message>
<source>Care</source>
<extracomment>report/document</extracomment>
<translation>Vorsicht</translation>
</message>
<message>
<source>{drawings}, {documents}.</source>
<extracomment>report/document</extracomment>
<translation>{drawings}, {documents}.</translation>
</message>
<message>
<source>1 document</source>
<extracomment>report/document</extracomment>
<translation>1 Dokument</translation>
</message>
<message>
<source>{count:,} documents</source>
<extracomment>report/document</extracomment>
<translation>{count:,} Dokumente</translation>
</message>
<message>
<source>1 drawing without a finding.</source>
<extracomment>report/document</extracomment>
<translation>1 Zeichnung ohne Befund.</translation>
</message>
<message>
<source>{count:,} drawings without a finding.</source>
<extracomment>report/document</extracomment>
<translation>{count:,} Zeichnungen ohne Befund.</translation>
</message>
<message>
<source>1 file of which no document could be made.</source>
<extracomment>report/document</extracomment>
<translation>1 Datei, zu der kein Dokument erstellt werden konnte.</translation>
</message>
<message>
<source>{count:,} files of which no document could be made.</source>
<extracomment>report/document</extracomment>
<translation>{count:,} Dateien, zu denen kein Dokument erstellt werden konnte.</translation>
</message>
<message>
<source>1 finding accepted by somebody.</source>
<extracomment>report/document</extracomment>
<translation>1 Befund hat jemand hingenommen.</translation>
</message>
<message>
<source>{count:,} findings accepted by somebody.</source>
<extracomment>report/document</extracomment>
<translation>{count:,} Befunde hat jemand hingenommen.</translation>
</message>
<message>
<source>1 check failed inside the program: treat it as not judged.</source>
<extracomment>report/document</extracomment>
<translation>1 Prüfung ist im Programm gescheitert: Sie gilt als nicht beurteilt.</translation>
</message>
<message>
<source>{count:,} checks failed inside the program: treat them as not judged.</source>
<extracomment>report/document</extracomment>
<translation>{count:,} Prüfungen sind im Programm gescheitert: Sie gelten als nicht beurteilt.</translation>
</message>
<message>
<source>This list tells of the documents; each document tells what it could not judge, and why.</source>
<extracomment>report/document</extracomment>
<translation>Diese Liste sagt, was in den Dokumenten steht; jedes Dokument sagt, was es nicht beurteilen konnte, und warum.</translation>
</message>
<message>
<source>A drawing without findings is not a certificate. Local codes and makers’ instructions come first.</source>
<extracomment>report/document</extracomment>
<translation>Eine Zeichnung ohne Befunde ist keine Bescheinigung. Örtliche Vorschriften und die Anleitungen der Hersteller gehen vor.</translation>
</message>
<message>
<source>{rule_book} ({drawings})</source>
<extracomment>report/document</extracomment>
<translation>{rule_book} ({drawings})</translation>
</message>
<message>
<source>Findings by check</source>
<extracomment>report/document</extracomment>
<translation>Befunde nach Prüfungen</translation>
</message>
<message>
<source>Nothing was found.</source>
<extracomment>report/document</extracomment>
<translation>Nichts wurde gefunden.</translation>
</message>
<message>
<source>Check</source>
<extracomment>report/document</extracomment>
<translation>Prüfung</translation>
</message>
<message>
<source>Drawings</source>
<extracomment>report/document</extracomment>
<translation>Zeichnungen</translation>
</message>
<message>
<source>Every check that applies could judge.</source>
<extracomment>report/document</extracomment>
<translation>Jede Prüfung, die zutrifft, konnte urteilen.</translation>
</message>
<message>
<source>Verdict</source>
<extracomment>report/document</extracomment>
<translation>Urteil</translation>
</message>
<message>
<source>{count:,}</source>
<extracomment>report/document</extracomment>
<translation>{count:,}</translation>
</message>
<message>
<source>1 drawing</source>
<extracomment>report/document</extracomment>
<translation>1 Zeichnung</translation>
</message>
<message>
<source>{count:,} drawings</source>
<extracomment>report/document</extracomment>
<translation>{count:,} Zeichnungen</translation>
</message>
<message>
<source>Summary</source>
<extracomment>report/document</extracomment>
<translation>Überblick</translation>
</message>
<message>
<source>The lettering is small at this size: a larger paper, or the SVG, shows it larger.</source>
<extracomment>report/document</extracomment>
<translation>Die Schrift ist in dieser Größe klein: Auf größerem Papier oder im SVG ist sie größer.</translation>
</message>
<message>
<source>no date</source>
<extracomment>report/document</extracomment>
<translation>ohne Datum</translation>
</message>
<message>
<source>none</source>
<extracomment>report/document</extracomment>
<translation>keine</translation>
</message>
<message>
<source>This drawing carries no review record.</source>
<extracomment>report/document</extracomment>
<translation>Diese Zeichnung trägt kein Prüfprotokoll.</translation>
</message>
<message>
<source>Reviewed by</source>
<extracomment>report/document</extracomment>
<translation>Durchgesehen von</translation>
</message>
<message>
<source>Reviewed on</source>
<extracomment>report/document</extracomment>
<translation>Durchgesehen am</translation>
</message>
<message>
<source>no decision</source>
<extracomment>report/document</extracomment>
<translation>ohne Entscheidung</translation>
</message>
<message>
<source>With</source>
<extracomment>report/document</extracomment>
<translation>Mit</translation>
</message>
<message>
<source>{program}, rule book {rule_book}</source>
<extracomment>report/document</extracomment>
<translation>{program}, Regelwerk {rule_book}</translation>
</message>
<message>
<source>a program not named</source>
<extracomment>report/document</extracomment>
<translation>einem nicht genannten Programm</translation>
</message>
<message>
<source>not named</source>
<extracomment>report/document</extracomment>
<translation>nicht genannt</translation>
</message>
<message>
<source>Digest of the circuit</source>
<extracomment>report/document</extracomment>
<translation>Prüfsumme des Kreises</translation>
</message>
<message>
<source>Digest of the layout</source>
<extracomment>report/document</extracomment>
<translation>Prüfsumme der Anordnung</translation>
</message>
<message>
<source>Digest of findings, notes and acceptances</source>
<extracomment>report/document</extracomment>
<translation>Prüfsumme der Befunde, Notizen und hingenommenen Befunde</translation>
</message>
<message>
<source>Before it</source>
<extracomment>report/document</extracomment>
<translation>Davor</translation>
</message>
<message>
<source>{record}. {state}</source>
<extracomment>report/document</extracomment>
<translation>{record}. {state}</translation>
</message>
<message>
<source>This document made on</source>
<extracomment>report/document</extracomment>
<translation>Dieses Dokument erstellt am</translation>
</message>
<message>
<source>Design</source>
<extracomment>report/document</extracomment>
<translation>Auslegung</translation>
</message>
<message>
<source>1 check could not judge: see “What was judged”.</source>
<extracomment>report/document</extracomment>
<translation>1 Prüfung konnte nicht urteilen: siehe „Was beurteilt wurde“.</translation>
</message>
<message>
<source>{count} checks could not judge: see “What was judged”.</source>
<extracomment>report/document</extracomment>
<translation>{count} Prüfungen konnten nicht urteilen: siehe „Was beurteilt wurde“.</translation>
</message>
<message>
<source>{count} checks failed inside the program: treat them as not judged.</source>
<extracomment>report/document</extracomment>
<translation>{count} Prüfungen sind im Programm gescheitert: Sie gelten als nicht beurteilt.</translation>
</message>
<message>
<source>1 finding is unanswered, since numbers are missing.</source>
<extracomment>report/document</extracomment>
<translation>1 Befund ist offen, weil Angaben fehlen.</translation>
</message>
<message>
<source>{count} findings are unanswered, since numbers are missing.</source>
<extracomment>report/document</extracomment>
<translation>{count} Befunde sind offen, weil Angaben fehlen.</translation>
</message>
<message>
<source>Nothing of this drawing is placed on a sheet.</source>
<extracomment>report/document</extracomment>
<translation>Von dieser Zeichnung steht nichts auf einem Blatt.</translation>
</message>
<message>
<source>Not placed on the sheet, but judged</source>
<extracomment>report/document</extracomment>
<translation>Nicht auf dem Blatt, aber beurteilt</translation>
</message>
<message>
<source>Where</source>
<extracomment>report/document</extracomment>
<translation>Wo</translation>
</message>
<message>
<source>Tried in this drawing, and it removes the finding</source>
<extracomment>report/document</extracomment>
<translation>In dieser Zeichnung versucht, und es behebt den Befund</translation>
</message>
<message>
<source>Source: {source}</source>
<extracomment>report/document</extracomment>
<translation>Quelle: {source}</translation>
</message>
<message>
<source>These checks apply or may apply, and could not answer. Nothing is known of them.</source>
<extracomment>report/document</extracomment>
<translation>Diese Prüfungen treffen zu oder können zutreffen und konnten nicht antworten. Von ihnen ist nichts bekannt.</translation>
</message>
<message>
<source>Why it did not judge</source>
<extracomment>report/document</extracomment>
<translation>Warum sie nicht geurteilt hat</translation>
</message>
<message>
<source>Every check that applies has judged.</source>
<extracomment>report/document</extracomment>
<translation>Jede Prüfung, die zutrifft, hat geurteilt.</translation>
</message>
<message>
<source>No drawing can show this, and nothing here judges it</source>
<extracomment>report/document</extracomment>
<translation>Das kann keine Zeichnung zeigen, und nichts hier beurteilt es</translation>
</message>
<message>
<source>Usual values that verdicts rest on, since the drawing does not give them</source>
<extracomment>report/document</extracomment>
<translation>Übliche Werte, auf denen Urteile beruhen, weil die Zeichnung sie nicht angibt</translation>
</message>
<message>
<source>Looked for and not found</source>
<extracomment>report/document</extracomment>
<translation>Gesucht und nicht gefunden</translation>
</message>
<message>
<source>Does not apply to this drawing</source>
<extracomment>report/document</extracomment>
<translation>Trifft auf diese Zeichnung nicht zu</translation>
</message>
<message>
<source>What was judged, and what was not</source>
<extracomment>report/document</extracomment>
<translation>Was beurteilt wurde und was nicht</translation>
</message>
<message>
<source>Acceptances</source>
<extracomment>report/document</extracomment>
<translation>Hingenommene Befunde</translation>
</message>
<message>
<source>Nobody has accepted a finding of this drawing.</source>
<extracomment>report/document</extracomment>
<translation>Niemand hat einen Befund dieser Zeichnung hingenommen.</translation>
</message>
<message>
<source>none given</source>
<extracomment>report/document</extracomment>
<translation>keiner angegeben</translation>
</message>
<message>
<source>no end</source>
<extracomment>report/document</extracomment>
<translation>ohne Ende</translation>
</message>
<message>
<source>Finding</source>
<extracomment>report/document</extracomment>
<translation>Befund</translation>
</message>
<message>
<source>On</source>
<extracomment>report/document</extracomment>
<translation>An</translation>
</message>
<message>
<source>By</source>
<extracomment>report/document</extracomment>
<translation>Von</translation>
</message>
<message>
<source>Until</source>
<extracomment>report/document</extracomment>
<translation>Bis</translation>
</message>
<message>
<source>State today</source>
<extracomment>report/document</extracomment>
<translation>Stand heute</translation>
</message>
<message>
<source>Parts list</source>
<extracomment>report/document</extracomment>
<translation>Stückliste</translation>
</message>
<message>
<source>Metres</source>
<extracomment>report/document</extracomment>
<translation>Meter</translation>
</message>
<message>
<source>Count</source>
<extracomment>report/document</extracomment>
<translation>Anzahl</translation>
</message>
<message>
<source>Part</source>
<extracomment>report/document</extracomment>
<translation>Bauteil</translation>
</message>
<message>
<source>not known: {lacking}</source>
<extracomment>report/document</extracomment>
<translation>nicht bekannt: {lacking}</translation>
</message>
<message>
<source>Each with its formula, what went into it and from where, and its source.</source>
<extracomment>report/document</extracomment>
<translation>Jede mit ihrer Formel, dem, was woher eingeht, und ihrer Quelle.</translation>
</message>
<message>
<source>Figures with their working</source>
<extracomment>report/document</extracomment>
<translation>Berechnungen mit ihrem Rechenweg</translation>
</message>
<message>
<source>Symbol</source>
<extracomment>report/document</extracomment>
<translation>Zeichen</translation>
</message>
<message>
<source>Holds: {limits}</source>
<extracomment>report/document</extracomment>
<translation>Gilt: {limits}</translation>
</message>
<message>
<source>What broke it</source>
<extracomment>report/document</extracomment>
<translation>Was es gebrochen hat</translation>
</message>
<message>
<source>To be filled in by hand where no record is kept in the file:</source>
<extracomment>report/document</extracomment>
<translation>Von Hand auszufüllen, wo in der Datei kein Protokoll steht:</translation>
</message>
<message>
<source>Made from the drawing. Local codes, licensed practice and the makers’ instructions come first; a step that they add is added, and one that they forbid is left out. Numbers are what to expect of the plant as drawn: a reading that differs has found a fault of the plant or of the drawing.</source>
<extracomment>report/document</extracomment>
<translation>Aus der Zeichnung erstellt. Örtliche Vorschriften, zugelassene Praxis und die Anleitungen der Hersteller gehen vor; ein Schritt, den sie verlangen, kommt hinzu, einer, den sie verbieten, entfällt. Die Zahlen sind das, was von der Anlage wie gezeichnet zu erwarten ist: Eine abweichende Ablesung hat einen Fehler der Anlage oder der Zeichnung gefunden.</translation>
</message>
<message>
<source>no motor valve</source>
<extracomment>report/document</extracomment>
<translation>kein Motorventil</translation>
</message>
<message>
<source>Commissioning sheet</source>
<extracomment>report/document</extracomment>
<translation>Inbetriebnahmeblatt</translation>
</message>
<message>
<source>Nothing is drawn, so there is nothing to commission.</source>
<extracomment>report/document</extracomment>
<translation>Nichts ist gezeichnet, also ist nichts in Betrieb zu nehmen.</translation>
</message>
<message>
<source>Not known from the drawing: settle these first</source>
<extracomment>report/document</extracomment>
<translation>Aus der Zeichnung nicht bekannt: zuerst klären</translation>
</message>
<message>
<source>Signed</source>
<extracomment>report/document</extracomment>
<translation>Unterschrieben</translation>
</message>
<message>
<source>Sources: {sources}.</source>
<extracomment>report/document</extracomment>
<translation>Quellen: {sources}.</translation>
</message>
<message>
<source>Do</source>
<extracomment>report/document</extracomment>
<translation>Zu tun</translation>
</message>
<message>
<source>Expect</source>
<extracomment>report/document</extracomment>
<translation>Zu erwarten</translation>
</message>
<message>
<source>None can be told: no heat source drives heating water in this drawing, or its ways are too many.</source>
<extracomment>report/document</extracomment>
<translation>Keiner lässt sich nennen: In dieser Zeichnung treibt kein Wärmeerzeuger Heizwasser um, oder es sind zu viele Wege.</translation>
</message>
<message>
<source>Bring each about by its controls, wait until it is steady, and feel or measure the pipes. Thermostatic heads stand open. Flows are in litres a minute.</source>
<extracomment>report/document</extracomment>
<translation>Jeden über seine Regelung herbeiführen, warten, bis er sich eingestellt hat, und die Rohre befühlen oder messen. Thermostatköpfe stehen offen. Volumenströme sind in Litern je Minute.</translation>
</message>
<message>
<source>Shut</source>
<extracomment>report/document</extracomment>
<translation>Zu</translation>
</message>
<message>
<source>Runs</source>
<extracomment>report/document</extracomment>
<translation>Läuft</translation>
</message>
<message>
<source>nothing</source>
<extracomment>report/document</extracomment>
<translation>nichts</translation>
</message>
<message>
<source>Gets warm</source>
<extracomment>report/document</extracomment>
<translation>Wird warm</translation>
</message>
<message>
<source>Stays as it was</source>
<extracomment>report/document</extracomment>
<translation>Bleibt, wie es war</translation>
</message>
<message>
<source>Gauge</source>
<extracomment>report/document</extracomment>
<translation>Manometer</translation>
</message>
<message>
<source>Installed by</source>
<extracomment>report/document</extracomment>
<translation>Eingebaut von</translation>
</message>
<message>
<source>Commissioned by</source>
<extracomment>report/document</extracomment>
<translation>In Betrieb genommen von</translation>
</message>
<message>
<source>Checked by</source>
<extracomment>report/document</extracomment>
<translation>Geprüft von</translation>
</message>
<message>
<source>User</source>
<extracomment>report/document</extracomment>
<translation>Betreiber</translation>
</message>
<message>
<source>Registration</source>
<extracomment>report/document</extracomment>
<translation>Zulassung</translation>
</message>
<message>
<source>Date</source>
<extracomment>report/document</extracomment>
<translation>Datum</translation>
</message>
<message>
<source>Signature</source>
<extracomment>report/document</extracomment>
<translation>Unterschrift</translation>
</message>
<message>
<source>no gauge is drawn</source>
<extracomment>report/document</extracomment>
<translation>kein Manometer gezeichnet</translation>
</message>
<message>
<source>not told: see the figure for pressures</source>
<extracomment>report/document</extracomment>
<translation>nicht bekannt: siehe die Berechnung der Drücke</translation>
</message>
<message>
<source>{situation}: {stands}</source>
<extracomment>report/document</extracomment>
<translation>{situation}: {stands}</translation>
</message>
<message>
<source>Meant to: {parts}</source>
<extracomment>report/document</extracomment>
<translation>Soll: {parts}</translation>
</message>
<message>
<source>Not told</source>
<extracomment>report/document</extracomment>
<translation>Nicht bekannt</translation>
</message>
<message>
<source>Nothing: no water is driven</source>
<extracomment>report/document</extracomment>
<translation>Nichts: Es wird kein Wasser umgetrieben</translation>
</message>
<message>
<source>{these} and {count} more</source>
<extracomment>report/document</extracomment>
<translation>{these} und {count} weitere</translation>
</message>
<message>
<source>Only what is left in it: {parts}</source>
<extracomment>report/document</extracomment>
<translation>Nur, was noch darin ist: {parts}</translation>
</message>
<message>
<source>Flows are not told, since numbers are missing: {named}.</source>
<extracomment>report/document</extracomment>
<translation>Volumenströme sind nicht bekannt, weil Angaben fehlen: {named}.</translation>
</message>
<message>
<source>{value} {when}</source>
<extracomment>report/document</extracomment>
<translation>{value} {when}</translation>
</message>
<message>
<source>{gauge}: {readings}</source>
<extracomment>report/document</extracomment>
<translation>{gauge}: {readings}</translation>
</message>
<message>
<source>{situation}: where water moves, in litres a minute</source>
<extracomment>report/document</extracomment>
<translation>{situation}: wo Wasser fließt, in Litern je Minute</translation>
</message>
<message>
<source>BS 7593:2019</source>
<extracomment>report/document</extracomment>
<translation>BS 7593:2019</translation>
</message>
<message>
<source>taught in trade textbooks: the charge is measured with no water pressure on the vessel</source>
<extracomment>report/document</extracomment>
<translation>in Fachbüchern gelehrt: Der Vordruck wird ohne Wasserdruck auf dem Gefäß gemessen</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2</source>
<extracomment>report/document</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absatz 24, mit Richtlinie G24.2</translation>
</message>
<message>
<source>Inhibitor put in, label left at the plant</source>
<extracomment>report/document</extracomment>
<translation>Korrosionsschutz zugegeben, Schild an der Anlage angebracht</translation>
</message>
<message>
<source>Circuit cleaned and flushed, water run off to a foul drain</source>
<extracomment>report/document</extracomment>
<translation>Kreis gereinigt und gespült, Wasser ins Schmutzwasser abgelassen</translation>
</message>
<message>
<source>runs clear</source>
<extracomment>report/document</extracomment>
<translation>läuft klar</translation>
</message>
<message>
<source>{part}: gas charge, measured with the water side empty</source>
<extracomment>report/document</extracomment>
<translation>{part}: Vordruck, bei leerer Wasserseite gemessen</translation>
</message>
<message>
<source>{first}; {second}: the sources disagree</source>
<extracomment>report/document</extracomment>
<translation>{first}; {second}: Die Quellen sind uneins</translation>
</message>
<message>
<source>Pressure test of the heating pipework, cold and full of water, before it is hidden</source>
<extracomment>report/document</extracomment>
<translation>Druckprobe der Heizungsrohre, kalt und voll Wasser, bevor sie verdeckt werden</translation>
</message>
<message>
<source>{pressure}, no loss after 30 minutes to settle</source>
<extracomment>report/document</extracomment>
<translation>{pressure}, kein Verlust nach 30 Minuten Beruhigung</translation>
</message>
<message>
<source>By the other source {pressure}</source>
<extracomment>report/document</extracomment>
<translation>Nach der anderen Quelle {pressure}</translation>
</message>
<message>
<source>Shut or left off: {parts}</source>
<extracomment>report/document</extracomment>
<translation>Abgesperrt oder weggelassen: {parts}</translation>
</message>
<message>
<source>Heating circuit filled, cold fill pressure at the vessel</source>
<extracomment>report/document</extracomment>
<translation>Heizkreis gefüllt, Fülldruck kalt am Ausdehnungsgefäß</translation>
</message>
<message>
<source>EN 12828, Annex D (from memory), with the figure for the vessel in this document</source>
<extracomment>report/document</extracomment>
<translation>EN 12828, Anhang D (aus dem Gedächtnis), mit der Berechnung des Gefäßes in diesem Dokument</translation>
</message>
<message>
<source>{gauge}: reading cold and at rest</source>
<extracomment>report/document</extracomment>
<translation>{gauge}: Anzeige kalt und in Ruhe</translation>
</message>
<message>
<source>hydrostatics, worked in this document</source>
<extracomment>report/document</extracomment>
<translation>Hydrostatik, in diesem Dokument berechnet</translation>
</message>
<message>
<source>{part}: float valve set, water level above the datum</source>
<extracomment>report/document</extracomment>
<translation>{part}: Schwimmerventil eingestellt, Wasserspiegel über der Bezugshöhe</translation>
</message>
<message>
<source>Air let out at every emitter, vent and high point, pressure made up</source>
<extracomment>report/document</extracomment>
<translation>An jeder Heizfläche, jedem Entlüfter und Hochpunkt entlüftet, Druck nachgefüllt</translation>
</message>
<message>
<source>no air</source>
<extracomment>report/document</extracomment>
<translation>keine Luft</translation>
</message>
<message>
<source>{part}: taken off after filling, both ends closed</source>
<extracomment>report/document</extracomment>
<translation>{part}: nach dem Füllen abgenommen, beide Enden verschlossen</translation>
</message>
<message>
<source>taken off</source>
<extracomment>report/document</extracomment>
<translation>abgenommen</translation>
</message>
<message>
<source>Store filled with a hot tap open, then each tap run until clear</source>
<extracomment>report/document</extracomment>
<translation>Speicher bei offenem Warmwasserhahn gefüllt, dann jeden Hahn laufen lassen, bis es klar ist</translation>
</message>
<message>
<source>no air, no dirt</source>
<extracomment>report/document</extracomment>
<translation>keine Luft, kein Schmutz</translation>
</message>
<message>
<source>{vessel} may be filled from {least} to {most}</source>
<extracomment>report/document</extracomment>
<translation>{vessel} darf von {least} bis {most} gefüllt werden</translation>
</message>
<message>
<source>about {dose} for {content} of water; the supplier’s dose comes first</source>
<extracomment>report/document</extracomment>
<translation>etwa {dose} auf {content} Wasser; die Dosis des Lieferanten geht vor</translation>
</message>
<message>
<source>{part}: standing pressure</source>
<extracomment>report/document</extracomment>
<translation>{part}: Ruhedruck</translation>
</message>
<message>
<source>{part}: running pressure</source>
<extracomment>report/document</extracomment>
<translation>{part}: Fließdruck</translation>
</message>
<message>
<source>{part}: flow, running</source>
<extracomment>report/document</extracomment>
<translation>{part}: Volumenstrom beim Zapfen</translation>
</message>
<message>
<source>{part}: pressure behind it, no tap open</source>
<extracomment>report/document</extracomment>
<translation>{part}: Druck dahinter, kein Hahn offen</translation>
</message>
<message>
<source>taught in trade textbooks; for how long: common practice, no source</source>
<extracomment>report/document</extracomment>
<translation>in Fachbüchern gelehrt; wie lange: übliche Praxis, ohne Quelle</translation>
</message>
<message>
<source>Approved Document G (England) 3.54 to 3.63; WFR guidance G19.3</source>
<extracomment>report/document</extracomment>
<translation>Approved Document G (England) 3.54 bis 3.63; WFR-Richtlinie G19.3</translation>
</message>
<message>
<source>Approved Document G, guidance to G3 (paragraph from memory): the cut-out shuts off the heat to the store</source>
<extracomment>report/document</extracomment>
<translation>Approved Document G, Richtlinie zu G3 (Absatz aus dem Gedächtnis): Der Begrenzer sperrt die Wärme zum Speicher ab</translation>
</message>
<message>
<source>Approved Document L: with no call the appliance and the pump are off; City &amp; Guilds Textbook: Plumbing, Book 1 (2019), interlock</source>
<extracomment>report/document</extracomment>
<translation>Approved Document L: Ohne Anforderung sind Gerät und Pumpe aus; City &amp; Guilds Textbook: Plumbing, Buch 1 (2019), Verriegelung</translation>
</message>
<message>
<source>shuts</source>
<extracomment>report/document</extracomment>
<translation>schließt</translation>
</message>
<message>
<source>opens</source>
<extracomment>report/document</extracomment>
<translation>öffnet</translation>
</message>
<message>
<source>stays as it stands</source>
<extracomment>report/document</extracomment>
<translation>bleibt stehen, wie es steht</translation>
</message>
<message>
<source>{part}: lifted by hand, closes again</source>
<extracomment>report/document</extracomment>
<translation>{part}: von Hand gelüftet, schließt wieder</translation>
</message>
<message>
<source>{part}: lifted by hand for 20 to 30 seconds, closes again</source>
<extracomment>report/document</extracomment>
<translation>{part}: 20 bis 30 Sekunden von Hand gelüftet, schließt wieder</translation>
</message>
<message>
<source>{part}: takes the whole discharge, nothing splashes over, in sight</source>
<extracomment>report/document</extracomment>
<translation>{part}: nimmt alles Abgeblasene auf, nichts spritzt über, ist in Sicht</translation>
</message>
<message>
<source>runs away freely to the end</source>
<extracomment>report/document</extracomment>
<translation>läuft frei bis zum Ende ab</translation>
</message>
<message>
<source>{part}: end seen, no one can be scalded there</source>
<extracomment>report/document</extracomment>
<translation>{part}: Ende angesehen, niemand kann dort verbrüht werden</translation>
</message>
<message>
<source>clear of people</source>
<extracomment>report/document</extracomment>
<translation>fern von Personen</translation>
</message>
<message>
<source>set as the store’s maker states</source>
<extracomment>report/document</extracomment>
<translation>eingestellt, wie der Hersteller des Speichers angibt</translation>
</message>
<message>
<source>set at {value}</source>
<extracomment>report/document</extracomment>
<translation>eingestellt auf {value}</translation>
</message>
<message>
<source>its discharge reaches no end in this drawing</source>
<extracomment>report/document</extracomment>
<translation>seine Abblaseleitung erreicht in dieser Zeichnung kein Ende</translation>
</message>
<message>
<source>water seen at {end}</source>
<extracomment>report/document</extracomment>
<translation>Wasser zu sehen an: {end}</translation>
</message>
<message>
<source>water seen at {tundish} and at {end}</source>
<extracomment>report/document</extracomment>
<translation>Wasser zu sehen an: {tundish} und {end}</translation>
</message>
<message>
<source>{valve} shuts and stays shut until the cut-out is reset by hand</source>
<extracomment>report/document</extracomment>
<translation>{valve} schließt und bleibt zu, bis der Begrenzer von Hand entriegelt wird</translation>
</message>
<message>
<source>the drawing names no valve that it shuts</source>
<extracomment>report/document</extracomment>
<translation>die Zeichnung nennt kein Ventil, das er schließt</translation>
</message>
<message>
<source>{part}: energy cut-out operated while the coil is called</source>
<extracomment>report/document</extracomment>
<translation>{part}: Sicherheitstemperaturbegrenzer ausgelöst, während die Heizschlange Wärme anfordert</translation>
</message>
<message>
<source>{part}: immersion heater’s own cut-out operated</source>
<extracomment>report/document</extracomment>
<translation>{part}: Begrenzer des Elektro-Heizstabs ausgelöst</translation>
</message>
<message>
<source>no current until it is reset by hand; by a qualified electrician</source>
<extracomment>report/document</extracomment>
<translation>kein Strom, bis er von Hand entriegelt wird; durch eine Elektrofachkraft</translation>
</message>
<message>
<source>{control}: calls, then is satisfied</source>
<extracomment>report/document</extracomment>
<translation>{control}: fordert an und ist dann zufrieden</translation>
</message>
<message>
<source>{control}: calls, then is satisfied at {value}</source>
<extracomment>report/document</extracomment>
<translation>{control}: fordert an und ist dann bei {value} zufrieden</translation>
</message>
<message>
<source>{parts} open and close with it</source>
<extracomment>report/document</extracomment>
<translation>{parts}: öffnet und schließt damit</translation>
</message>
<message>
<source>after at most {minutes} minutes the pump stops as well</source>
<extracomment>report/document</extracomment>
<translation>nach höchstens {minutes} Minuten bleibt auch die Pumpe stehen</translation>
</message>
<message>
<source>{part}: every thermostat satisfied, heads on radiators left open</source>
<extracomment>report/document</extracomment>
<translation>{part}: alle Thermostate zufrieden, Köpfe an den Heizkörpern offen gelassen</translation>
</message>
<message>
<source>the heat source goes off</source>
<extracomment>report/document</extracomment>
<translation>der Wärmeerzeuger geht aus</translation>
</message>
<message>
<source>stands open to {leg}</source>
<extracomment>report/document</extracomment>
<translation>steht offen nach {leg}</translation>
</message>
<message>
<source>{valve}: supply taken away</source>
<extracomment>report/document</extracomment>
<translation>{valve}: Strom weggenommen</translation>
</message>
<message>
<source>as drawn; the maker’s data come first</source>
<extracomment>report/document</extracomment>
<translation>wie gezeichnet; die Angaben des Herstellers gehen vor</translation>
</message>
<message>
<source>WFR guidance G18.4: 50 °C within 30 seconds; HSG274 part 2 and BS 8558 allow a minute: sources disagree</source>
<extracomment>report/document</extracomment>
<translation>WFR-Richtlinie G18.4: 50 °C binnen 30 Sekunden; HSG274 Teil 2 und BS 8558 erlauben eine Minute: Die Quellen sind uneins</translation>
</message>
<message>
<source>BS 7593:2019: the water tested every year; safety and relief valves lifted yearly: common practice, no source</source>
<extracomment>report/document</extracomment>
<translation>BS 7593:2019: jedes Jahr eine Wasserprobe; Sicherheitsventile jährlich gelüftet: übliche Praxis, ohne Quelle</translation>
</message>
<message>
<source>kv of its balancing valve about {value}</source>
<extracomment>report/document</extracomment>
<translation>kv des Abgleichventils etwa {value}</translation>
</message>
<message>
<source>{part}: flow set</source>
<extracomment>report/document</extracomment>
<translation>{part}: Volumenstrom eingestellt</translation>
</message>
<message>
<source>{part}: flow set, return not warmer than designed</source>
<extracomment>report/document</extracomment>
<translation>{part}: Volumenstrom eingestellt, Rücklauf nicht wärmer als ausgelegt</translation>
</message>
<message>
<source>not told: numbers are missing, see the figure for balancing</source>
<extracomment>report/document</extracomment>
<translation>nicht bekannt: Angaben fehlen, siehe die Berechnung zum Abgleich</translation>
</message>
<message>
<source>{part}: set; stays cool while a zone is open, opens when all are shut</source>
<extracomment>report/document</extracomment>
<translation>{part}: eingestellt; bleibt kühl, solange ein Heizkreis offen ist, öffnet, wenn alle zu sind</translation>
</message>
<message>
<source>{range} serves both</source>
<extracomment>report/document</extracomment>
<translation>{range} passt für beides</translation>
</message>
<message>
<source>worked in this document</source>
<extracomment>report/document</extracomment>
<translation>in diesem Dokument berechnet</translation>
</message>
<message>
<source>Flow temperature, all heating called, settled</source>
<extracomment>report/document</extracomment>
<translation>Vorlauftemperatur, alle Heizung angefordert, eingeschwungen</translation>
</message>
<message>
<source>Return temperature, all heating called, settled</source>
<extracomment>report/document</extracomment>
<translation>Rücklauftemperatur, alle Heizung angefordert, eingeschwungen</translation>
</message>
<message>
<source>as designed</source>
<extracomment>report/document</extracomment>
<translation>wie ausgelegt</translation>
</message>
<message>
<source>at least {value}</source>
<extracomment>report/document</extracomment>
<translation>mindestens {value}</translation>
</message>
<message>
<source>{part}: temperature of the store</source>
<extracomment>report/document</extracomment>
<translation>{part}: Temperatur des Speichers</translation>
</message>
<message>
<source>{part}: temperature of the mixed water</source>
<extracomment>report/document</extracomment>
<translation>{part}: Temperatur des Mischwassers</translation>
</message>
<message>
<source>{part}: hottest water at the bath</source>
<extracomment>report/document</extracomment>
<translation>{part}: heißestes Wasser an der Badewanne</translation>
</message>
<message>
<source>at most {value}</source>
<extracomment>report/document</extracomment>
<translation>höchstens {value}</translation>
</message>
<message>
<source>{value} within 30 seconds; less where it is blended on purpose</source>
<extracomment>report/document</extracomment>
<translation>{value} binnen 30 Sekunden; weniger, wo absichtlich gemischt wird</translation>
</message>
<message>
<source>{part}: hot water after 30 seconds</source>
<extracomment>report/document</extracomment>
<translation>{part}: Warmwasser nach 30 Sekunden</translation>
</message>
<message>
<source>User shown the controls, the gauge, filling, and how to shut off water, gas and electricity</source>
<extracomment>report/document</extracomment>
<translation>Dem Betreiber Regelung, Manometer, Füllen und das Absperren von Wasser, Gas und Strom gezeigt</translation>
</message>
<message>
<source>User told that relief pipes may run at any time, near boiling, and whom to call then</source>
<extracomment>report/document</extracomment>
<translation>Dem Betreiber gesagt, dass Abblaseleitungen jederzeit laufen können, fast siedend, und wen er dann ruft</translation>
</message>
<message>
<source>Makers’ instructions, this document and notices to the authority left with the user</source>
<extracomment>report/document</extracomment>
<translation>Anleitungen der Hersteller, dieses Dokument und Meldungen an die Behörde beim Betreiber gelassen</translation>
</message>
<message>
<source>Next service agreed</source>
<extracomment>report/document</extracomment>
<translation>Nächste Wartung vereinbart</translation>
</message>
<message>
<source>within a year</source>
<extracomment>report/document</extracomment>
<translation>binnen eines Jahres</translation>
</message>
<message>
<source>date</source>
<extracomment>report/document</extracomment>
<translation>Datum</translation>
</message>
<message>
<source>en-GB</source>
<extracomment>report/document</extracomment>
<translation>de</translation>
</message>
<message>
<source>A drawing is not a certificate.</source>
<extracomment>report</extracomment>
<translation>Eine Zeichnung ist keine Bescheinigung.</translation>
</message>
<message>
<source>Nothing drawn, nothing judged</source>
<extracomment>report</extracomment>
<translation>Nichts gezeichnet, nichts beurteilt</translation>
</message>
<message>
<source>can hurt someone, or breaks a legal safety provision</source>
<extracomment>report</extracomment>
<translation>kann jemanden verletzen oder bricht eine vorgeschriebene Sicherheitseinrichtung</translation>
</message>
<message>
<source>will not work, or will do damage</source>
<extracomment>report</extracomment>
<translation>wird nicht funktionieren oder Schaden anrichten</translation>
</message>
<message>
<source>good practice</source>
<extracomment>report</extracomment>
<translation>gute Praxis</translation>
</message>
<message>
<source>a number is missing</source>
<extracomment>report</extracomment>
<translation>eine Angabe fehlt</translation>
</message>
<message>
<source>by hand</source>
<extracomment>report</extracomment>
<translation>von Hand</translation>
</message>
<message>
<source>no call</source>
<extracomment>report</extracomment>
<translation>keine Anforderung</translation>
</message>
<message>
<source>room warm</source>
<extracomment>report</extracomment>
<translation>Raum warm</translation>
</message>
<message>
<source>against its arrow</source>
<extracomment>report</extracomment>
<translation>gegen seinen Pfeil</translation>
</message>
<message>
<source>spring shut</source>
<extracomment>report</extracomment>
<translation>Feder geschlossen</translation>
</message>
<message>
<source>The checks failed</source>
<extracomment>report</extracomment>
<translation>Die Prüfungen sind gescheitert</translation>
</message>
<message>
<source>{grade}, would be {worse}</source>
<extracomment>report</extracomment>
<translation>{grade}, wäre: {worse}</translation>
</message>
<message>
<source>secured</source>
<extracomment>report</extracomment>
<translation>gesichert</translation>
</message>
<message>
<source>No one valve does it alone.</source>
<extracomment>report</extracomment>
<translation>Kein Ventil tut es allein.</translation>
</message>
<message>
<source>Both together do.</source>
<extracomment>report</extracomment>
<translation>Beide zusammen tun es.</translation>
</message>
<message>
<source>All three together do.</source>
<extracomment>report</extracomment>
<translation>Alle drei zusammen tun es.</translation>
</message>
<message>
<source>All {count} together do.</source>
<extracomment>report</extracomment>
<translation>Alle {count} zusammen tun es.</translation>
</message>
<message>
<source>{valve} does it alone too.</source>
<extracomment>report</extracomment>
<translation>{valve} tut es auch allein.</translation>
</message>
<message>
<source>{valves} each do it alone too.</source>
<extracomment>report</extracomment>
<translation>{valves} tun es auch, jedes allein.</translation>
</message>
<message>
<source>It does it alone.</source>
<extracomment>report</extracomment>
<translation>Es tut es allein.</translation>
</message>
<message>
<source>Each does it alone.</source>
<extracomment>report</extracomment>
<translation>Jedes tut es allein.</translation>
</message>
<message>
<source>No check judged anything</source>
<extracomment>report</extracomment>
<translation>Keine Prüfung hat etwas beurteilt</translation>
</message>
<message>
<source>There is not enough in this drawing to judge.</source>
<extracomment>report</extracomment>
<translation>In dieser Zeichnung ist nicht genug, um zu urteilen.</translation>
</message>
<message>
<source>Nothing found by 1 check</source>
<extracomment>report</extracomment>
<translation>Von 1 Prüfung nichts gefunden</translation>
</message>
<message>
<source>Nothing found by {count} checks</source>
<extracomment>report</extracomment>
<translation>Von {count} Prüfungen nichts gefunden</translation>
</message>
<message>
<source>{check}: {why}</source>
<extracomment>report</extracomment>
<translation>{check}: {why}</translation>
</message>
<message>
<source>missing: {names}</source>
<extracomment>report</extracomment>
<translation>es fehlt: {names}</translation>
</message>
<message>
<source>not enough is known</source>
<extracomment>report</extracomment>
<translation>es ist nicht genug bekannt</translation>
</message>
<message>
<source>{field} {value}</source>
<extracomment>report</extracomment>
<translation>{field} {value}</translation>
</message>
<message>
<source>{leg} shut</source>
<extracomment>report</extracomment>
<translation>{leg} zu</translation>
</message>
<message>
<source>No pump drives heating water in this drawing.</source>
<extracomment>report</extracomment>
<translation>In dieser Zeichnung fördert keine Pumpe Heizwasser.</translation>
</message>
<message>
<source>The ways of this circuit are too many to follow.</source>
<extracomment>report</extracomment>
<translation>Die Wege dieses Kreises sind zu viele, um ihnen zu folgen.</translation>
</message>
<message>
<source>(at {where})</source>
<extracomment>report</extracomment>
<translation>(bei {where})</translation>
</message>
<message>
<source>Not solved{at}: {why}.</source>
<extracomment>report</extracomment>
<translation>Nicht gelöst{at}: {why}.</translation>
</message>
<message>
<source>{valve} {state}</source>
<extracomment>report</extracomment>
<translation>{valve} {state}</translation>
</message>
<message>
<source>under 1 Pa</source>
<extracomment>report</extracomment>
<translation>unter 1 Pa</translation>
</message>
<message>
<source>Nothing is known of the flow in this pipe.</source>
<extracomment>report</extracomment>
<translation>Über den Volumenstrom in diesem Rohr ist nichts bekannt.</translation>
</message>
<message>
<source>No flow in this pipe.</source>
<extracomment>report</extracomment>
<translation>Kein Volumenstrom in diesem Rohr.</translation>
</message>
<message>
<source>No flow: nothing goes round through this pipe.</source>
<extracomment>report</extracomment>
<translation>Kein Volumenstrom: Durch dieses Rohr läuft nichts um.</translation>
</message>
<message>
<source>{flow} towards {part}</source>
<extracomment>report</extracomment>
<translation>{flow} in Richtung {part}</translation>
</message>
<message>
<source>Shut: {shut}.</source>
<extracomment>report</extracomment>
<translation>Zu: {shut}.</translation>
</message>
<message>
<source>No motor valve is shut.</source>
<extracomment>report</extracomment>
<translation>Kein Motorventil ist zu.</translation>
</message>
<message>
<source>Running: {running}.</source>
<extracomment>report</extracomment>
<translation>In Betrieb: {running}.</translation>
</message>
<message>
<source>Nothing runs.</source>
<extracomment>report</extracomment>
<translation>Nichts ist in Betrieb.</translation>
</message>
<message>
<source>Tees</source>
<extracomment>report</extracomment>
<translation>T-Stücke</translation>
</message>
<message>
<source>copper pipe</source>
<extracomment>report</extracomment>
<translation>Kupferrohr</translation>
</message>
<message>
<source>plastic pipe</source>
<extracomment>report</extracomment>
<translation>Kunststoffrohr</translation>
</message>
<message>
<source>steel pipe</source>
<extracomment>report</extracomment>
<translation>Stahlrohr</translation>
</message>
<message>
<source>{these} not known</source>
<extracomment>report</extracomment>
<translation>{these} nicht bekannt</translation>
</message>
<message>
<source>1 length</source>
<extracomment>report</extracomment>
<translation>1 Länge</translation>
</message>
<message>
<source>{count} lengths</source>
<extracomment>report</extracomment>
<translation>{count} Längen</translation>
</message>
<message>
<source>bends of 1 pipe</source>
<extracomment>report</extracomment>
<translation>die Bögen von 1 Rohr</translation>
</message>
<message>
<source>bends of {count} pipes</source>
<extracomment>report</extracomment>
<translation>die Bögen von {count} Rohren</translation>
</message>
<message>
<source>The length of {some} of 1 pipe is not known and not in the sums: {named}.</source>
<extracomment>report</extracomment>
<translation>Die Länge von {some} von 1 Rohr ist nicht bekannt und nicht in den Summen enthalten: {named}.</translation>
</message>
<message>
<source>The length of {some} of {count} pipes is not known and not in the sums: {named}.</source>
<extracomment>report</extracomment>
<translation>Die Länge von {some} der {count} Rohre ist nicht bekannt und nicht in den Summen enthalten: {named}.</translation>
</message>
<message>
<source>The bends of 1 pipe are not known: {named}.</source>
<extracomment>report</extracomment>
<translation>Die Bögen von 1 Rohr sind nicht bekannt: {named}.</translation>
</message>
<message>
<source>The bends of {count} pipes are not known: {named}.</source>
<extracomment>report</extracomment>
<translation>Die Bögen von {count} Rohren sind nicht bekannt: {named}.</translation>
</message>
<message>
<source>Measured from the line at the sheet's scale: {named}.</source>
<extracomment>report</extracomment>
<translation>An der Linie im Maßstab des Blatts gemessen: {named}.</translation>
</message>
<message>
<source>Material taken as copper, since not given, for {of_them}: {named}.</source>
<extracomment>report</extracomment>
<translation>Werkstoff als Kupfer angenommen, da nicht angegeben, bei {of_them}: {named}.</translation>
</message>
<message>
<source>size</source>
<extracomment>report</extracomment>
<translation>Größe</translation>
</message>
<message>
<source>bore {bore_mm:g} mm</source>
<extracomment>report</extracomment>
<translation>Innendurchmesser {bore_mm:g} mm</translation>
</message>
<message>
<source>marked fit for hot discharge</source>
<extracomment>report</extracomment>
<translation>als geeignet für heißes Abblasen gekennzeichnet</translation>
</message>
<message>
<source>{insulated_m} m of it insulated</source>
<extracomment>report</extracomment>
<translation>davon {insulated_m} m gedämmt</translation>
</message>
<message>
<source>material</source>
<extracomment>report</extracomment>
<translation>Werkstoff</translation>
</message>
<message>
<source>size not known</source>
<extracomment>report</extracomment>
<translation>Größe nicht bekannt</translation>
</message>
<message>
<source>{unit}</source>
<extracomment>report</extracomment>
<translation>{unit}</translation>
</message>
<message>
<source>{field} {value}{unit}</source>
<extracomment>report</extracomment>
<translation>{field} {value}{unit}</translation>
</message>
<message>
<source>not {all}</source>
<extracomment>report</extracomment>
<translation>{all}: nein</translation>
</message>
<message>
<source>no {thing}</source>
<extracomment>report</extracomment>
<translation>ohne {thing}</translation>
</message>
<message>
<source>{named} and {ids} more</source>
<extracomment>report</extracomment>
<translation>{named} und {ids} weitere</translation>
</message>
<message>
<source>{fields}: {by} {moved}</source>
<extracomment>report</extracomment>
<translation>{fields}: {by} {moved}</translation>
</message>
<message>
<source>{fields}: {by} {moved} each</source>
<extracomment>report</extracomment>
<translation>{fields}: {by} je {moved}</translation>
</message>
<message>
<source>would leave no figure: what it is worked by does not hold then</source>
<extracomment>report</extracomment>
<translation>ließe kein Ergebnis übrig: Die Rechnung gälte dann nicht mehr</translation>
</message>
<message>
<source>would move the result by {share}</source>
<extracomment>report</extracomment>
<translation>würde das Ergebnis um {share} ändern</translation>
</message>
<message>
<source>would move the result by {least} to {most}</source>
<extracomment>report</extracomment>
<translation>würde das Ergebnis um {least} bis {most} ändern</translation>
</message>
<message>
<source>Set {field}</source>
<extracomment>report</extracomment>
<translation>{field} setzen</translation>
</message>
<message>
<source>Set {part}’s {field}</source>
<extracomment>report</extracomment>
<translation>{part}: {field} setzen</translation>
</message>
<message>
<source>Set {field} of {count}</source>
<extracomment>report</extracomment>
<translation>{field} von {count} setzen</translation>
</message>
<message>
<source>The drawing’s {field}</source>
<extracomment>report</extracomment>
<translation>Zur Zeichnung: {field}</translation>
</message>
<message>
<source>{part}: {field}</source>
<extracomment>report</extracomment>
<translation>{part}: {field}</translation>
</message>
<message>
<source>A finding is accepted with a reason.</source>
<extracomment>review</extracomment>
<translation>Ein Befund wird mit einem Grund hingenommen.</translation>
</message>
<message>
<source>A finding is accepted by somebody: give a name.</source>
<extracomment>review</extracomment>
<translation>Ein Befund wird von jemandem hingenommen: Geben Sie einen Namen an.</translation>
</message>
<message>
<source>An acceptance that has run out already accepts nothing.</source>
<extracomment>review</extracomment>
<translation>Was schon abgelaufen ist, nimmt nichts mehr hin.</translation>
</message>
<message>
<source>This acceptance is no longer in the drawing.</source>
<extracomment>review</extracomment>
<translation>Dieser Befund steht nicht mehr als hingenommen in der Zeichnung.</translation>
</message>
<message>
<source>{check} on {parts}</source>
<extracomment>review</extracomment>
<translation>{check} bei {parts}</translation>
</message>
<message>
<source>There is no note {id}.</source>
<extracomment>review</extracomment>
<translation>Es gibt keine Notiz {id}.</translation>
</message>
<message>
<source>{id} (gone)</source>
<extracomment>review</extracomment>
<translation>{id} (entfallen)</translation>
</message>
<message>
<source>A note is pinned to parts, pipes or controls of the drawing; {id} is none.</source>
<extracomment>review</extracomment>
<translation>Eine Notiz wird an Bauteile, Rohre oder Regler der Zeichnung geheftet; {id} ist keines davon.</translation>
</message>
<message>
<source>A note says who wrote it.</source>
<extracomment>review</extracomment>
<translation>Eine Notiz nennt, wer sie geschrieben hat.</translation>
</message>
<message>
<source>A note says something.</source>
<extracomment>review</extracomment>
<translation>Eine Notiz sagt etwas.</translation>
</message>
<message>
<source>The record covers the whole drawing as it was on that day: every part and pipe with all its data, what is joined to what, the controls and the design figures; where each stands on the sheet; what the checks found; the notes and acceptances; and the record's own words. The order in which the file lists things is not covered, since it says nothing.</source>
<extracomment>review</extracomment>
<translation>Das Protokoll umfasst die ganze Zeichnung, wie sie an jenem Tag war: jedes Bauteil und Rohr mit allen Angaben, was womit verbunden ist, die Regler und die Auslegungswerte; wo jedes auf dem Blatt steht; was die Prüfungen gefunden haben; die Notizen und hingenommenen Befunde; und den Wortlaut des Protokolls selbst. Die Reihenfolge in der Datei ist nicht umfasst, da sie nichts besagt.</translation>
</message>
<message>
<source>It cannot prove who made it: it carries no signature, and whoever can write the file can write another record in any name. It cannot prove that the last record was not taken out, that the numbers in the drawing are true, or that what was built is what was drawn. Against a change by accident or unawares it is sure; against a forger keep a copy, or the digests, somewhere else.</source>
<extracomment>review</extracomment>
<translation>Es kann nicht beweisen, wer es erstellt hat: Es trägt keine Unterschrift, und wer die Datei schreiben kann, kann ein anderes Protokoll in jedem Namen schreiben. Es kann nicht beweisen, dass das letzte Protokoll nicht herausgenommen wurde, dass die Zahlen in der Zeichnung stimmen oder dass gebaut wurde, was gezeichnet war. Gegen eine versehentliche oder unbemerkte Änderung ist es sicher; gegen einen Fälscher bewahren Sie eine Kopie oder die Prüfsummen anderswo auf.</translation>
</message>
<message>
<source>A review record says who made it: give a name.</source>
<extracomment>review</extracomment>
<translation>Ein Prüfprotokoll nennt, wer es erstellt hat: Geben Sie einen Namen an.</translation>
</message>
<message>
<source>A review record says what was decided.</source>
<extracomment>review</extracomment>
<translation>Ein Prüfprotokoll nennt, was entschieden wurde.</translation>
</message>
<message>
<source>not given</source>
<extracomment>review</extracomment>
<translation>nicht angegeben</translation>
</message>
<message>
<source>name</source>
<extracomment>review</extracomment>
<translation>Bezeichnung</translation>
</message>
<message>
<source>title</source>
<extracomment>review</extracomment>
<translation>Titel</translation>
</message>
<message>
<source>acts on</source>
<extracomment>review</extracomment>
<translation>wirkt auf</translation>
</message>
<message>
<source>in the same room as</source>
<extracomment>review</extracomment>
<translation>im selben Raum wie</translation>
</message>
<message>
<source>direction</source>
<extracomment>review</extracomment>
<translation>Richtung</translation>
</message>
<message>
<source>{name} ({id})</source>
<extracomment>review</extracomment>
<translation>{name} ({id})</translation>
</message>
<message>
<source>not given (usual: {value})</source>
<extracomment>review</extracomment>
<translation>nicht angegeben (üblich: {value})</translation>
</message>
<message>
<source>{field} from {old} to {new}</source>
<extracomment>review</extracomment>
<translation>{field} von {old} auf {new}</translation>
</message>
<message>
<source>joined {before}, now {after}</source>
<extracomment>review</extracomment>
<translation>verbunden {before}, jetzt {after}</translation>
</message>
<message>
<source>Removed: {part}.</source>
<extracomment>review</extracomment>
<translation>Entfernt: {part}.</translation>
</message>
<message>
<source>Fitted: {part}.</source>
<extracomment>review</extracomment>
<translation>Eingebaut: {part}.</translation>
</message>
<message>
<source>Re-piped: {part} {how}.</source>
<extracomment>review</extracomment>
<translation>Anders angeschlossen: {part} {how}.</translation>
</message>
<message>
<source>the drawing</source>
<extracomment>review</extracomment>
<translation>die Zeichnung</translation>
</message>
<message>
<source>Changed: {what}, {how}.</source>
<extracomment>review</extracomment>
<translation>Geändert: {what}, {how}.</translation>
</message>
<message>
<source>Called by another id: {mine} is now {its}.</source>
<extracomment>review</extracomment>
<translation>Mit anderer Kennung: {mine} heißt jetzt {its}.</translation>
</message>
<message>
<source>Moved on the sheet: {part}.</source>
<extracomment>review</extracomment>
<translation>Auf dem Blatt verschoben: {part}.</translation>
</message>
<message>
<source>note</source>
<extracomment>review</extracomment>
<translation>Notiz</translation>
</message>
<message>
<source>acceptance</source>
<extracomment>review</extracomment>
<translation>hingenommener Befund</translation>
</message>
<message>
<source>The record is broken: {broken}.</source>
<extracomment>review</extracomment>
<translation>Das Protokoll ist gebrochen: {broken}.</translation>
</message>
<message>
<source>The record does not say enough of the drawing it was made of to be held against this one.</source>
<extracomment>review</extracomment>
<translation>Das Protokoll sagt zu wenig über die Zeichnung, von der es erstellt wurde, um es an dieser zu prüfen.</translation>
</message>
<message>
<source>The record holds: the drawing, its notes and acceptances are as they were reviewed; its findings were worked out by {program} and are not told again here.</source>
<extracomment>review</extracomment>
<translation>Das Protokoll gilt: Die Zeichnung, ihre Notizen und hingenommenen Befunde sind, wie sie durchgesehen wurden; ihre Befunde hat {program} ermittelt, sie werden hier nicht noch einmal aufgeführt.</translation>
</message>
<message>
<source>The record holds: the drawing, its findings, notes and acceptances are as they were reviewed.</source>
<extracomment>review</extracomment>
<translation>Das Protokoll gilt: Die Zeichnung, ihre Befunde, Notizen und hingenommenen Befunde sind, wie sie durchgesehen wurden.</translation>
</message>
<message>
<source>What is there and how it is joined is as it was reviewed.</source>
<extracomment>review</extracomment>
<translation>Was da ist und wie es verbunden ist, ist wie durchgesehen.</translation>
</message>
<message>
<source>The record does not tell how the drawing was, so what changed cannot be named.</source>
<extracomment>review</extracomment>
<translation>Das Protokoll sagt nicht, wie die Zeichnung war, also lässt sich nicht nennen, was sich geändert hat.</translation>
</message>
<message>
<source>And {count} more.</source>
<extracomment>review</extracomment>
<translation>Und {count} weitere.</translation>
</message>
<message>
<source>The record's own words, or what it says was found, are not what was signed.</source>
<extracomment>review</extracomment>
<translation>Der Wortlaut des Protokolls, oder was es als gefunden nennt, ist nicht das, was unterschrieben wurde.</translation>
</message>
<message>
<source>{who}, {date}: {decision}</source>
<extracomment>review</extracomment>
<translation>{who}, {date}: {decision}</translation>
</message>
<message>
<source>the circuit or its data have changed</source>
<extracomment>review</extracomment>
<translation>der Kreis oder seine Angaben haben sich geändert</translation>
</message>
<message>
<source>the layout on the sheet has changed</source>
<extracomment>review</extracomment>
<translation>die Anordnung auf dem Blatt hat sich geändert</translation>
</message>
<message>
<source>findings, notes, acceptances or the record's own words have changed</source>
<extracomment>review</extracomment>
<translation>Befunde, Notizen, hingenommene Befunde oder der Wortlaut des Protokolls haben sich geändert</translation>
</message>
<message>
<source>the record before it was altered or taken out</source>
<extracomment>review</extracomment>
<translation>das Protokoll davor wurde verändert oder herausgenommen</translation>
</message>
<message>
<source>New</source>
<extracomment>review</extracomment>
<translation>Neu</translation>
</message>
<message>
<source>Gone</source>
<extracomment>review</extracomment>
<translation>Entfallen</translation>
</message>
<message>
<source>{verb} {what}: {name}.</source>
<extracomment>review</extracomment>
<translation>{verb}: {what}: {name}.</translation>
</message>
<message>
<source>{part} at {port}</source>
<extracomment>review</extracomment>
<translation>{part} am Anschluss {port}</translation>
</message>
<message>
<source>“{text}”</source>
<extracomment>review</extracomment>
<translation>„{text}“</translation>
</message>
<message>
<source>low level</source>
<extracomment>sheet</extracomment>
<translation>niedrige Höhe</translation>
</message>
<message>
<source>gully, below the grating</source>
<extracomment>sheet</extracomment>
<translation>Ablauf, unter dem Rost</translation>
</message>
<message>
<source>left connected</source>
<extracomment>sheet</extracomment>
<translation>bleibt verbunden</translation>
</message>
<message>
<source>open-vented heating</source>
<extracomment>sheet</extracomment>
<translation>offene Heizung</translation>
</message>
<message>
<source>sealed heating</source>
<extracomment>sheet</extracomment>
<translation>geschlossene Heizung</translation>
</message>
<message>
<source>mains-fed store</source>
<extracomment>sheet</extracomment>
<translation>geschlossener Speicher</translation>
</message>
<message>
<source>store fed from a cistern</source>
<extracomment>sheet</extracomment>
<translation>Speicher aus einem Behälter gespeist</translation>
</message>
<message>
<source>cut off from the</source>
<extracomment>sheet</extracomment>
<translation>abgesperrt:</translation>
</message>
<message>
<source>The drawing: {title}, 1 part</source>
<extracomment>sheet</extracomment>
<translation>Die Zeichnung: {title}, 1 Bauteil</translation>
</message>
<message>
<source>The drawing: {title}, {count} parts</source>
<extracomment>sheet</extracomment>
<translation>Die Zeichnung: {title}, {count} Bauteile</translation>
</message>
<message>
<source>BS 5449 as taught in trade textbooks: 1.5 times the normal working pressure, after 30 minutes to settle</source>
<extracomment>sizing</extracomment>
<translation>BS 5449 wie in Fachbüchern gelehrt: das 1,5-Fache des üblichen Betriebsdrucks, nach 30 Minuten Beruhigung</translation>
</message>
<message>
<source>BS EN 14336 (from memory): at least 1.3 times</source>
<extracomment>sizing</extracomment>
<translation>BS EN 14336 (aus dem Gedächtnis): mindestens das 1,3-Fache</translation>
</message>
<message>
<source>common practice, no source: a litre for each 100 litres; the supplier's dose comes first</source>
<extracomment>sizing</extracomment>
<translation>übliche Praxis, ohne Quelle: ein Liter je 100 Liter; die Dosis des Lieferanten geht vor</translation>
</message>
<message>
<source>given to {where}</source>
<extracomment>storage</extracomment>
<translation>vergeben an {where}</translation>
</message>
<message>
<source>given once</source>
<extracomment>storage</extracomment>
<translation>nur einmal angegeben</translation>
</message>
<message>
<source>The id {id} is {found}; each item needs its own.</source>
<extracomment>storage</extracomment>
<translation>Die Kennung {id} ist {found}; jedes Ding braucht seine eigene.</translation>
</message>
<message>
<source>on {part}, which is no part</source>
<extracomment>storage</extracomment>
<translation>an {part}, das kein Bauteil ist</translation>
</message>
<message>
<source>on {part}, which has no port {port}</source>
<extracomment>storage</extracomment>
<translation>an {part}, das keinen Anschluss {port} hat</translation>
</message>
<message>
<source>twice on the same port, {end}</source>
<extracomment>storage</extracomment>
<translation>zweimal am selben Anschluss, {end}</translation>
</message>
<message>
<source>on {end}, where {taken} already is</source>
<extracomment>storage</extracomment>
<translation>an {end}, wo schon {taken} ist</translation>
</message>
<message>
<source>{item}.{field} names {value}, but nothing in the file has that id.</source>
<extracomment>storage</extracomment>
<translation>{item}.{field} nennt {value}, aber nichts in der Datei hat diese Kennung.</translation>
</message>
<message>
<source>the id of an item of the file</source>
<extracomment>storage</extracomment>
<translation>die Kennung eines Dings in der Datei</translation>
</message>
<message>
<source>Pipe {pipe} has an end {found}.</source>
<extracomment>storage</extracomment>
<translation>Rohr {pipe} hat ein Ende {found}.</translation>
</message>
<message>
<source>a port of a part with no other pipe on it</source>
<extracomment>storage</extracomment>
<translation>ein Anschluss eines Bauteils ohne anderes Rohr daran</translation>
</message>
<message>
<source>{name} cannot be read: {message}</source>
<extracomment>storage</extracomment>
<translation>{name} kann nicht gelesen werden: {message}</translation>
</message>
<message>
<source>{name} cannot be read. {faults} things are wrong:</source>
<extracomment>storage</extracomment>
<translation>{name} kann nicht gelesen werden. {faults} Fehler sind darin:</translation>
</message>
<message>
<source>{item} is {found}, but must be {expected}.</source>
<extracomment>storage</extracomment>
<translation>{item} ist {found}, muss aber {expected} sein.</translation>
</message>
<message>
<source>Reading stopped after {most_faults:,} faults; there may be more.</source>
<extracomment>storage</extracomment>
<translation>Das Lesen brach nach {most_faults:,} Fehlern ab; es können mehr sein.</translation>
</message>
<message>
<source>The file</source>
<extracomment>storage</extracomment>
<translation>Die Datei</translation>
</message>
<message>
<source>{where} has no {field}; it must be {expected}.</source>
<extracomment>storage</extracomment>
<translation>{where} hat kein {field}; es muss {expected} sein.</translation>
</message>
<message>
<source>a number of very many digits</source>
<extracomment>storage</extracomment>
<translation>eine Zahl mit sehr vielen Stellen</translation>
</message>
<message>
<source>a list of {value}</source>
<extracomment>storage</extracomment>
<translation>eine Liste von {value}</translation>
</message>
<message>
<source>an object</source>
<extracomment>storage</extracomment>
<translation>ein Objekt</translation>
</message>
<message>
<source>given more than once</source>
<extracomment>storage</extracomment>
<translation>mehr als einmal angegeben</translation>
</message>
<message>
<source>the version of the format</source>
<extracomment>storage</extracomment>
<translation>die Version des Formats</translation>
</message>
<message>
<source>Line {line} holds half a character, {escape}.</source>
<extracomment>storage</extracomment>
<translation>Zeile {line} enthält ein halbes Zeichen, {escape}.</translation>
</message>
<message>
<source>The file is no drawing: a drawing is one JSON object.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist keine Zeichnung: Eine Zeichnung ist ein einziges JSON-Objekt.</translation>
</message>
<message>
<source>a drawing</source>
<extracomment>storage</extracomment>
<translation>eine Zeichnung</translation>
</message>
<message>
<source>The file has {raws:,} {name}; this program reads at most {most:,}.</source>
<extracomment>storage</extracomment>
<translation>Die Datei hat {raws:,} {name}; dieses Programm liest höchstens {most:,}.</translation>
</message>
<message>
<source>a text of at most {longest:,} characters</source>
<extracomment>storage</extracomment>
<translation>ein Text von höchstens {longest:,} Zeichen</translation>
</message>
<message>
<source>{expected}, or null</source>
<extracomment>storage</extracomment>
<translation>{expected}, oder null</translation>
</message>
<message>
<source>a text of 1 to {longest_label:,} characters</source>
<extracomment>storage</extracomment>
<translation>ein Text von 1 bis {longest_label:,} Zeichen</translation>
</message>
<message>
<source>a list of ids</source>
<extracomment>storage</extracomment>
<translation>eine Liste von Kennungen</translation>
</message>
<message>
<source>0, 90, 180 or 270</source>
<extracomment>storage</extracomment>
<translation>0, 90, 180 oder 270</translation>
</message>
<message>
<source>true or false</source>
<extracomment>storage</extracomment>
<translation>true oder false</translation>
</message>
<message>
<source>a list</source>
<extracomment>storage</extracomment>
<translation>eine Liste</translation>
</message>
<message>
<source>[x, y], two numbers from {what:,.0f} to {farthest:,.0f}</source>
<extracomment>storage</extracomment>
<translation>[x, y], zwei Zahlen von {what:,.0f} bis {farthest:,.0f}</translation>
</message>
<message>
<source>a list of corners, each [x, y]</source>
<extracomment>storage</extracomment>
<translation>eine Liste von Ecken, jede [x, y]</translation>
</message>
<message>
<source>two ends, each ["id", "port"] or [x, y]</source>
<extracomment>storage</extracomment>
<translation>zwei Enden, jedes ["Kennung", "Anschluss"] oder [x, y]</translation>
</message>
<message>
<source>a day such as "2030-01-31"</source>
<extracomment>storage</extracomment>
<translation>ein Tag wie "2030-01-31"</translation>
</message>
<message>
<source>a text of hexadecimal digits</source>
<extracomment>storage</extracomment>
<translation>ein Text aus Hexadezimalziffern</translation>
</message>
<message>
<source>a list, without repeats, of any of {choices}</source>
<extracomment>storage</extracomment>
<translation>eine Liste, ohne Wiederholungen, aus {choices}</translation>
</message>
<message>
<source>a kind of {what} that this program knows</source>
<extracomment>storage</extracomment>
<translation>eine Art ({what}), die dieses Programm kennt</translation>
</message>
<message>
<source>a number{field}, or null</source>
<extracomment>storage</extracomment>
<translation>eine Zahl{field}, oder null</translation>
</message>
<message>
<source>and at most {most:g}</source>
<extracomment>storage</extracomment>
<translation>und höchstens {most:g}</translation>
</message>
<message>
<source>above {above:g}{most}{unit}</source>
<extracomment>storage</extracomment>
<translation>über {above:g}{most}{unit}</translation>
</message>
<message>
<source>from {least:g} to {most:g}{unit}</source>
<extracomment>storage</extracomment>
<translation>von {least:g} bis {most:g}{unit}</translation>
</message>
<message>
<source>of at least {least:g}{unit}</source>
<extracomment>storage</extracomment>
<translation>von mindestens {least:g}{unit}</translation>
</message>
<message>
<source>of at most {most:g}{unit}</source>
<extracomment>storage</extracomment>
<translation>von höchstens {most:g}{unit}</translation>
</message>
<message>
<source>{names} or {names_2}</source>
<extracomment>storage</extracomment>
<translation>{names} oder {names_2}</translation>
</message>
<message>
<source>the disk is full</source>
<extracomment>storage</extracomment>
<translation>der Datenträger ist voll</translation>
</message>
<message>
<source>the space allotted on this disk is used up</source>
<extracomment>storage</extracomment>
<translation>der zugeteilte Platz auf diesem Datenträger ist verbraucht</translation>
</message>
<message>
<source>the disk is read-only</source>
<extracomment>storage</extracomment>
<translation>der Datenträger ist schreibgeschützt</translation>
</message>
<message>
<source>writing there is not allowed</source>
<extracomment>storage</extracomment>
<translation>dort darf nicht geschrieben werden</translation>
</message>
<message>
<source>the disk reports an error</source>
<extracomment>storage</extracomment>
<translation>der Datenträger meldet einen Fehler</translation>
</message>
<message>
<source>the folder does not exist</source>
<extracomment>storage</extracomment>
<translation>den Ordner gibt es nicht</translation>
</message>
<message>
<source>the name is too long</source>
<extracomment>storage</extracomment>
<translation>der Name ist zu lang</translation>
</message>
<message>
<source>the file is too large for this disk</source>
<extracomment>storage</extracomment>
<translation>die Datei ist zu groß für diesen Datenträger</translation>
</message>
<message>
<source>its link leads in a circle</source>
<extracomment>storage</extracomment>
<translation>seine Verknüpfung führt im Kreis</translation>
</message>
<message>
<source>was not saved</source>
<extracomment>storage</extracomment>
<translation>wurde nicht gespeichert</translation>
</message>
<message>
<source>is saved, but perhaps not for good</source>
<extracomment>storage</extracomment>
<translation>ist gespeichert, aber vielleicht nicht dauerhaft</translation>
</message>
<message>
<source>“{name}” {what}: {reason}.</source>
<extracomment>storage</extracomment>
<translation>„{name}“ {what}: {reason}.</translation>
</message>
<message>
<source>nested at most {most_depth} deep</source>
<extracomment>storage</extracomment>
<translation>höchstens {most_depth} tief verschachtelt</translation>
</message>
<message>
<source>Expecting value</source>
<extracomment>storage</extracomment>
<translation>Erwartet ist ein Wert</translation>
</message>
<message>
<source>Expecting ',' delimiter</source>
<extracomment>storage</extracomment>
<translation>Erwartet ist ein „,“</translation>
</message>
<message>
<source>Expecting ':' delimiter</source>
<extracomment>storage</extracomment>
<translation>Erwartet ist ein „:“</translation>
</message>
<message>
<source>Expecting property name enclosed in double quotes</source>
<extracomment>storage</extracomment>
<translation>Erwartet ist ein Name in doppelten Anführungszeichen</translation>
</message>
<message>
<source>Unterminated string starting at</source>
<extracomment>storage</extracomment>
<translation>Hier beginnt ein Text, der kein Ende hat</translation>
</message>
<message>
<source>Invalid \escape</source>
<extracomment>storage</extracomment>
<translation>Nach einem \ steht Ungültiges</translation>
</message>
<message>
<source>Invalid \uXXXX escape</source>
<extracomment>storage</extracomment>
<translation>Nach \u stehen keine vier Ziffern</translation>
</message>
<message>
<source>Invalid control character at</source>
<extracomment>storage</extracomment>
<translation>Ein Steuerzeichen steht, wo keines stehen darf</translation>
</message>
<message>
<source>Illegal trailing comma before end of object</source>
<extracomment>storage</extracomment>
<translation>Vor der schließenden Klammer steht ein Komma zu viel</translation>
</message>
<message>
<source>Illegal trailing comma before end of array</source>
<extracomment>storage</extracomment>
<translation>Vor der schließenden eckigen Klammer steht ein Komma zu viel</translation>
</message>
<message>
<source>Extra data</source>
<extracomment>storage</extracomment>
<translation>Nach dem Ende steht noch etwas</translation>
</message>
<message>
<source>line {lineno}, column {colno}</source>
<extracomment>storage</extracomment>
<translation>Zeile {lineno}, Spalte {colno}</translation>
</message>
<message>
<source>The file is not JSON: {where}: {why}.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist kein JSON: {where}: {why}.</translation>
</message>
<message>
<source>The file must be {nested}.</source>
<extracomment>storage</extracomment>
<translation>Die Datei muss {nested} sein.</translation>
</message>
<message>
<source>a finite number of at most {most_digits:,} digits</source>
<extracomment>storage</extracomment>
<translation>eine endliche Zahl mit höchstens {most_digits:,} Stellen</translation>
</message>
<message>
<source>The file is larger than {size} MiB.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist größer als {size} MiB.</translation>
</message>
<message>
<source>The file is coded as UTF-16 or UTF-32; a drawing is coded as UTF-8.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist als UTF-16 oder UTF-32 kodiert; eine Zeichnung ist als UTF-8 kodiert.</translation>
</message>
<message>
<source>The file is empty.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist leer.</translation>
</message>
<message>
<source>The file is not coded as UTF-8: line {line} holds other bytes.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist nicht als UTF-8 kodiert: Zeile {line} enthält andere Bytes.</translation>
</message>
<message>
<source>The file is of format version {version}, written by a later version of this program; this one reads versions up to {newest}.</source>
<extracomment>storage</extracomment>
<translation>Die Datei hat die Formatversion {version} und stammt von einer späteren Version dieses Programms; diese liest Versionen bis {newest}.</translation>
</message>
<message>
<source>The file is of format version {version}, which this program does not know.</source>
<extracomment>storage</extracomment>
<translation>Die Datei hat die Formatversion {version}, die dieses Programm nicht kennt.</translation>
</message>
<message>
<source>The file is no drawing: it has no "wetcircuit", the version of its format.</source>
<extracomment>storage</extracomment>
<translation>Die Datei ist keine Zeichnung: Ihr fehlt "wetcircuit", die Version ihres Formats.</translation>
</message>
<message>
<source>"wetcircuit", the version of the file's format, must be a whole number.</source>
<extracomment>storage</extracomment>
<translation>"wetcircuit", die Version des Dateiformats, muss eine ganze Zahl sein.</translation>
</message>
<message>
<source>{year}-{month}-{day}</source>
<extracomment>told</extracomment>
<translation>{day}.{month}.{year}</translation>
</message>
<message>
<source>{these} and {last}</source>
<extracomment>told</extracomment>
<translation>{these} und {last}</translation>
</message>
<message>
<source>not judged</source>
<extracomment>checks</extracomment>
<translation>nicht beurteilt</translation>
</message>
<message>
<source>{title}? The ways are too many to prove.</source>
<extracomment>checks</extracomment>
<translation>{title}? Die Wege sind zu viele für einen Nachweis.</translation>
</message>
<message>
<source>the ways are too many to prove</source>
<extracomment>checks</extracomment>
<translation>die Wege sind zu viele für einen Nachweis</translation>
</message>
<message>
<source>{title}? So many parts or pipes lie in one place on the sheet that it cannot be told; lay them out.</source>
<extracomment>checks</extracomment>
<translation>{title}? Auf dem Blatt liegen so viele Teile oder Leitungen an einer Stelle, dass es sich nicht sagen lässt; bitte auseinanderlegen.</translation>
</message>
<message>
<source>too much lies in one place on the sheet</source>
<extracomment>checks</extracomment>
<translation>auf dem Blatt liegt zu viel an einer Stelle</translation>
</message>
<message>
<source>not applicable</source>
<extracomment>checks</extracomment>
<translation>trifft nicht zu</translation>
</message>
<message>
<source>not known: {shown} and {rest} more</source>
<extracomment>checks</extracomment>
<translation>nicht bekannt: {shown} und {rest} weitere</translation>
</message>
<message>
<source>not known: {shown}</source>
<extracomment>checks</extracomment>
<translation>nicht bekannt: {shown}</translation>
</message>
<message>
<source>This check failed inside the program and has judged nothing: {error}.</source>
<extracomment>checks</extracomment>
<translation>Diese Prüfung ist im Programm gescheitert und hat nichts beurteilt: {error}.</translation>
</message>
<message>
<source>{title}? It rests on what is not known: {missing}.</source>
<extracomment>checks</extracomment>
<translation>{title}? Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>set {valve} to kv {kv}</source>
<extracomment>checks</extracomment>
<translation>{valve} auf Kv {kv} einstellen</translation>
</message>
<message>
<source>fit a balancing valve in the return of {taker}, set to kv {kv}</source>
<extracomment>checks</extracomment>
<translation>in den Rücklauf von {taker} ein Strangregulierventil einbauen, eingestellt auf Kv {kv}</translation>
</message>
<message>
<source>{steps}.</source>
<extracomment>checks</extracomment>
<translation>{steps}.</translation>
</message>
<message>
<source>The valve positions around {thing} are too many to prove.</source>
<extracomment>checks</extracomment>
<translation>Die Ventilstellungen um {thing} sind zu viele für einen Nachweis.</translation>
</message>
<message>
<source>Set {bypass} to {set} kPa.</source>
<extracomment>checks</extracomment>
<translation>{bypass} auf {set} kPa einstellen.</translation>
</message>
<message>
<source>Set {bypass} to {set} kPa, though it then opens while heat is called as well.</source>
<extracomment>checks</extracomment>
<translation>{bypass} auf {set} kPa einstellen, obwohl es dann auch öffnet, während Wärme gefordert ist.</translation>
</message>
<message>
<source>Fit an automatic bypass valve from {start} to {finish}, set to {set} kPa, with {metres} m of pipe on either side of it.</source>
<extracomment>checks</extracomment>
<translation>Ein automatisches Überströmventil von {start} zu {finish} einbauen, eingestellt auf {set} kPa, mit {metres} m Rohr auf jeder Seite.</translation>
</message>
<message>
<source>workmanship, supports and freedom from leaks</source>
<extracomment>checks</extracomment>
<translation>Ausführung, Befestigung und Dichtheit</translation>
</message>
<message>
<source>gas, oil and solid fuel supply, flues, air for burning and ventilation</source>
<extracomment>checks</extracomment>
<translation>Versorgung mit Gas, Öl und festem Brennstoff, Abgas, Verbrennungsluft und Lüftung</translation>
</message>
<message>
<source>electrical supply, wiring and earthing</source>
<extracomment>checks</extracomment>
<translation>Stromversorgung, Verdrahtung und Erdung</translation>
</message>
<message>
<source>the building's structure</source>
<extracomment>checks</extracomment>
<translation>das Tragwerk des Gebäudes</translation>
</message>
<message>
<source>water quality and treatment</source>
<extracomment>checks</extracomment>
<translation>Wasserbeschaffenheit und Wasseraufbereitung</translation>
</message>
<message>
<source>The connections {right} and {other} of {thing} are changed over: cold water comes to the {other}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Anschlüsse „{right}“ und „{other}“ von {thing} sind vertauscht: Kaltwasser kommt bei „{other}“ an.</translation>
</message>
<message>
<source>The connections {right} and {other} of {thing} are changed over: water is drawn from the {other}, and the {right} leads to no tap.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Anschlüsse „{right}“ und „{other}“ von {thing} sind vertauscht: Wasser wird bei „{other}“ entnommen, und „{right}“ führt zu keinem Hahn.</translation>
</message>
<message>
<source>The connections {right} and {other} of {thing} are changed over: the water of the secondary circuit comes back by the {other}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Anschlüsse „{right}“ und „{other}“ von {thing} sind vertauscht: Das Wasser der Zirkulation kommt bei „{other}“ zurück.</translation>
</message>
<message>
<source>The connections {right} and {other} of {thing} are changed over: hot water comes to the {other}, and none to the {right}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Anschlüsse „{right}“ und „{other}“ von {thing} sind vertauscht: Warmwasser kommt bei „{other}“ an, und keines bei „{right}“.</translation>
</message>
<message>
<source>The flow and the return of {thing} are changed over: its flow leads to the return of {taker}, which is right for the other heat source.</source>
<extracomment>checks/circulation</extracomment>
<translation>Vorlauf und Rücklauf von {thing} sind vertauscht: Der Vorlauf führt zum Rücklauf von {taker}, der für den anderen Wärmeerzeuger richtig liegt.</translation>
</message>
<message>
<source>Either the flow and the return of {thing} are changed over, or those of {taker}: the flow of the one leads to the return of the other.</source>
<extracomment>checks/circulation</extracomment>
<translation>Entweder sind Vorlauf und Rücklauf von {thing} vertauscht oder die von {taker}: Der Vorlauf des einen führt zum Rücklauf des anderen.</translation>
</message>
<message>
<source>Either the flow and the return of {thing} are changed over, or those of all that is fed from there: the flow leads to the return of {taker}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Entweder sind Vorlauf und Rücklauf von {thing} vertauscht oder die von allem, was von dort versorgt wird: Der Vorlauf führt zum Rücklauf von {taker}.</translation>
</message>
<message>
<source>The connections {flow} and {return} of {thing} are changed over: the heat source's water has to come in above and to leave below.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Anschlüsse „{flow}“ und „{return}“ von {thing} sind vertauscht: Das Wasser des Wärmeerzeugers muss oben eintreten und unten austreten.</translation>
</message>
<message>
<source>The flow and the return of the coil in {thing} are changed over: it heats slower and less evenly.</source>
<extracomment>checks/circulation</extracomment>
<translation>Vorlauf und Rücklauf der Heizschlange in {thing} sind vertauscht: Sie heizt langsamer und weniger gleichmäßig.</translation>
</message>
<message>
<source>The flow and the return of one side of {thing} are changed over: hot water enters it where it should leave, and less heat goes over.</source>
<extracomment>checks/circulation</extracomment>
<translation>Vorlauf und Rücklauf einer Seite von {thing} sind vertauscht: Heißes Wasser tritt dort ein, wo es austreten soll, und es geht weniger Wärme über.</translation>
</message>
<message>
<source>Change over the pipes on {one} and {other} of {thing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Rohre an „{one}“ und „{other}“ von {thing} tauschen.</translation>
</message>
<message>
<source>Change over the pipes on the flow and the return of each of {thing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Die Rohre an Vorlauf und Rücklauf jeweils tauschen, bei {thing}.</translation>
</message>
<message>
<source>heating alone</source>
<extracomment>checks/circulation</extracomment>
<translation>Heizung allein</translation>
</message>
<message>
<source>{thing} needs {needed} l of water going round through it, and {litres} l do that nothing shuts off with {called} called.</source>
<extracomment>checks/circulation</extracomment>
<translation>Durch {thing} müssen {needed} l Wasser umlaufen; nur {litres} l sind es, die nichts absperrt, wenn {called} gefordert ist.</translation>
</message>
<message>
<source>heating and hot water</source>
<extracomment>checks/circulation</extracomment>
<translation>Heizung und Warmwasser</translation>
</message>
<message>
<source>{thing} needs {needed} l of water going round through it, and the whole circuit holds {litres} l.</source>
<extracomment>checks/circulation</extracomment>
<translation>Durch {thing} müssen {needed} l Wasser umlaufen, und der ganze Kreis enthält nur {litres} l.</translation>
</message>
<message>
<source>Does enough water always go round through {thing}? It rests on what is not known: {missing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Läuft immer genug Wasser durch {thing} um? Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} stands on water that no heat source heats.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} steht an Wasser, das kein Wärmeerzeuger erwärmt.</translation>
</message>
<message>
<source>{thing} stays cold: nothing drives water round through {heats}.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} bleibt kalt: Nichts fördert Wasser durch {heats}.</translation>
</message>
<message>
<source>{thing} stays cold: no loop leads from {pumps} through {heats}, through it and back without passing the same place twice.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} bleibt kalt: Kein Umlauf führt von {pumps} durch {heats}, hindurch und zurück, ohne zweimal dieselbe Stelle zu nehmen.</translation>
</message>
<message>
<source>{thing} stays cold: its water would have to go through {valve} from leg to leg, and a diverting valve opens one leg at a time.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} bleibt kalt: Sein Wasser müsste durch {valve} von Weg zu Weg, und ein Umschaltventil öffnet immer nur einen Weg.</translation>
</message>
<message>
<source>{thing} gets water only through {bypass}: every loop there is passes it, and it stays shut until other ways are.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} bekommt nur durch {bypass} Wasser: jeder Umlauf, den es gibt, führt dort hindurch, und es bleibt zu, bis andere Wege zu sind.</translation>
</message>
<message>
<source>{thing}'s water has to go through {valve} from leg to leg. Whether both ever stand open rests on what is not known: {missing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Das Wasser von {thing} muss durch {valve} von Weg zu Weg. Ob beide je offen stehen, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} is on a loop with no pump in it. Whether water goes round by itself rests on what is not known: {missing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} liegt in einem Umlauf ohne Pumpe. Ob das Wasser von selbst umläuft, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} is fitted the wrong way round: water can go through it only against its arrow.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} ist verkehrt herum eingebaut: Wasser kann nur gegen den Pfeil hindurch.</translation>
</message>
<message>
<source>{thing} takes water of at most {limit} °C, and water of {flow} °C reaches it with no blending valve on the way that is set to that or less.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} verträgt höchstens {limit} °C, und Wasser von {flow} °C erreicht das Bauteil, ohne dass auf dem Weg ein Mischventil auf diesen Wert oder weniger eingestellt ist.</translation>
</message>
<message>
<source>{thing} takes water of at most {limit} °C. Whether hotter water reaches it rests on what is not known: {missing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} verträgt höchstens {limit} °C. Ob heißeres Wasser dorthin gelangt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Set {valve} to {limit} °C.</source>
<extracomment>checks/circulation</extracomment>
<translation>{valve} auf {limit} °C einstellen.</translation>
</message>
<message>
<source>Fit a blending valve set to {limit} °C before {zone}, its cold port on the return.</source>
<extracomment>checks/circulation</extracomment>
<translation>Vor {zone} ein Mischventil einbauen, eingestellt auf {limit} °C, mit dem Kaltanschluss am Rücklauf.</translation>
</message>
<message>
<source>{thing} can be fired though every thermostat is satisfied: none acts on what feeds {parts}.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} kann heizen, obwohl jeder Thermostat zufrieden ist: Keiner wirkt auf das, was {parts} versorgt.</translation>
</message>
<message>
<source>{thing} can be fired at any time: no thermostat acts on anything that feeds {parts}.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} kann jederzeit heizen: Kein Thermostat wirkt auf irgendetwas, das {parts} versorgt.</translation>
</message>
<message>
<source>{thing} can be fired though every thermostat is satisfied: the programmer alone calls it.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} kann heizen, obwohl jeder Thermostat zufrieden ist: Die Zeitschaltuhr allein fordert Wärme.</translation>
</message>
<message>
<source>Whether {thing} can be fired with every thermostat satisfied rests on what is not known: {missing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Ob {thing} heizen kann, während jeder Thermostat zufrieden ist, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Let the valves' end switches call the heat source and the pump.</source>
<extracomment>checks/circulation</extracomment>
<translation>Wärmeerzeuger und Pumpe von den Endschaltern der Ventile anfordern lassen.</translation>
</message>
<message>
<source>Fit a thermostat for {parts}, each on a valve or pump of its own.</source>
<extracomment>checks/circulation</extracomment>
<translation>Für {parts} je einen Thermostat einbauen, jeden auf ein eigenes Ventil oder eine eigene Pumpe.</translation>
</message>
<message>
<source>the pump in {name}</source>
<extracomment>checks/circulation</extracomment>
<translation>die Pumpe in {name}</translation>
</message>
<message>
<source>With {valves} shut, {pumps} can drive no water round through {thing}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Ist {valves} zu, so kann {pumps} kein Wasser durch {thing} umwälzen.</translation>
</message>
<message>
<source>{pumps} can drive no water round through {thing}, however the valves stand.</source>
<extracomment>checks/circulation</extracomment>
<translation>{pumps} kann kein Wasser durch {thing} umwälzen, wie auch immer die Ventile stehen.</translation>
</message>
<message>
<source>is fitted the wrong way round</source>
<extracomment>checks/circulation</extracomment>
<translation>ist verkehrt herum eingebaut</translation>
</message>
<message>
<source>can be shut by hand</source>
<extracomment>checks/circulation</extracomment>
<translation>kann von Hand geschlossen werden</translation>
</message>
<message>
<source>can be shut by the householder</source>
<extracomment>checks/circulation</extracomment>
<translation>kann vom Bewohner geschlossen werden</translation>
</message>
<message>
<source>lies beyond the valves that shut</source>
<extracomment>checks/circulation</extracomment>
<translation>liegt hinter den Ventilen, die schließen</translation>
</message>
<message>
<source>leads round the pump alone and not through the heat source</source>
<extracomment>checks/circulation</extracomment>
<translation>führt nur um die Pumpe herum und nicht durch den Wärmeerzeuger</translation>
</message>
<message>
<source>{name} does not count: it {reason}.</source>
<extracomment>checks/circulation</extracomment>
<translation>{name} zählt nicht: Dieser Weg {reason}.</translation>
</message>
<message>
<source>{thing} has nowhere to drive water with {valves} shut.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} kann nirgends hin fördern, wenn {valves} zu ist.</translation>
</message>
<message>
<source>{thing} has no loop to drive water round, however the valves stand.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} hat keinen Umlauf, durch den Wasser gefördert werden könnte, wie auch immer die Ventile stehen.</translation>
</message>
<message>
<source>{thing} has a thermostatic head in the room of {thermostats}: the two work against each other.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} hat einen Thermostatkopf im Raum von {thermostats}: Beide arbeiten gegeneinander.</translation>
</message>
<message>
<source>Fit plain valves to {thing} in place of thermostatic heads.</source>
<extracomment>checks/circulation</extracomment>
<translation>{thing} mit einfachen Ventilen statt Thermostatköpfen ausrüsten.</translation>
</message>
<message>
<source>{things}: no room thermostat and no programmer can stop its heat.</source>
<extracomment>checks/circulation</extracomment>
<translation>{things}: Kein Raumthermostat und keine Zeitschaltuhr kann die Wärme abstellen.</translation>
</message>
<message>
<source>{things}: no room thermostat and no programmer can stop their heat.</source>
<extracomment>checks/circulation</extracomment>
<translation>{things}: Kein Raumthermostat und keine Zeitschaltuhr kann ihre Wärme abstellen.</translation>
</message>
<message>
<source>Fit a room thermostat that acts on {holder}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Einen Raumthermostat einbauen, der auf {holder} wirkt.</translation>
</message>
<message>
<source>Fit a motor valve in the flow to {thing}, and a room thermostat that acts on it.</source>
<extracomment>checks/circulation</extracomment>
<translation>Ein Motorventil in den Vorlauf zu {thing} einbauen und einen Raumthermostat, der darauf wirkt.</translation>
</message>
<message>
<source>{valve} is the only valve of {zones}: none of them can be heated without the others.</source>
<extracomment>checks/circulation</extracomment>
<translation>{valve} ist das einzige Ventil von {zones}: Keiner davon kann ohne die anderen beheizt werden.</translation>
</message>
<message>
<source>{valve} obeys {thermostats}: when one calls, the rooms of the others are heated too.</source>
<extracomment>checks/circulation</extracomment>
<translation>{valve} gehorcht mehreren: {thermostats}. Fordert einer Wärme, werden auch die Räume der anderen beheizt.</translation>
</message>
<message>
<source>Fit a motor valve and a thermostat each for {zones}, in place of {valve}.</source>
<extracomment>checks/circulation</extracomment>
<translation>Statt {valve} je ein Motorventil und einen Thermostat für {zones} einbauen.</translation>
</message>
<message>
<source>Turn {thing} round.</source>
<extracomment>checks</extracomment>
<translation>{thing} umdrehen.</translation>
</message>
<message>
<source>Take {valves} out, so that nobody can shut the way round.</source>
<extracomment>checks</extracomment>
<translation>{valves} ausbauen, damit niemand den Umweg schließen kann.</translation>
</message>
<message>
<source>the {port} of {part}</source>
<extracomment>checks</extracomment>
<translation>Anschluss {port} von {part}</translation>
</message>
<message>
<source>Fit an automatic bypass valve from {start} to {finish}, and set it.</source>
<extracomment>checks</extracomment>
<translation>Ein automatisches Überströmventil einbauen, von {start} zu {finish}, und es einstellen.</translation>
</message>
<message>
<source>Fit a pump in the flow of {heat}.</source>
<extracomment>checks</extracomment>
<translation>Eine Pumpe in den Vorlauf von {heat} einbauen.</translation>
</message>
<message>
<source>Let the energy cut-out of {store} break the supply of {valve}, which rests shut.</source>
<extracomment>checks</extracomment>
<translation>Den Sicherheitstemperaturbegrenzer von {store} die Stromversorgung von {valve} unterbrechen lassen, das stromlos geschlossen ist.</translation>
</message>
<message>
<source>Fit a two-port motorised valve that rests shut in the flow to the coil of {store}, and let its energy cut-out and its thermostat act on it.</source>
<extracomment>checks</extracomment>
<translation>In den Vorlauf zur Heizschlange von {store} ein stromlos geschlossenes Zweiwege-Motorventil einbauen und Sicherheitstemperaturbegrenzer und Thermostat darauf wirken lassen.</translation>
</message>
<message>
<source>Fit a store thermostat on {store} that acts on {valve}.</source>
<extracomment>checks</extracomment>
<translation>An {store} einen Speicherthermostat einbauen, der auf {valve} wirkt.</translation>
</message>
<message>
<source>Fit a motorised valve in the flow to the coil of {store}, and a store thermostat that acts on it.</source>
<extracomment>checks</extracomment>
<translation>In den Vorlauf zur Heizschlange von {store} ein Motorventil einbauen und einen Speicherthermostat, der darauf wirkt.</translation>
</message>
<message>
<source>Only a secured valve does it: make sure that it stays secured open.</source>
<extracomment>checks</extracomment>
<translation>Nur ein gesichertes Ventil tut es: Stellen Sie sicher, dass es gesichert offen bleibt.</translation>
</message>
<message>
<source>Each of these does it alone: {alone}.</source>
<extracomment>checks</extracomment>
<translation>Jedes davon tut es allein: {alone}.</translation>
</message>
<message>
<source>{thing} discharges nowhere: its pipe stops at {stops}.</source>
<extracomment>checks/discharge</extracomment>
<translation>{thing} bläst ins Nichts ab: Das Rohr hört bei {stops} auf.</translation>
</message>
<message>
<source>{thing} discharges nowhere: no pipe leads away from its outlet.</source>
<extracomment>checks/discharge</extracomment>
<translation>{thing} bläst ins Nichts ab: Kein Rohr führt vom Austritt weg.</translation>
</message>
<message>
<source>Lead the discharge of {thing} to an end of its own; where it ends must be told then.</source>
<extracomment>checks/discharge</extracomment>
<translation>Die Abblaseleitung von {thing} zu einem eigenen Ende führen; wo es liegt, muss dann angegeben werden.</translation>
</message>
<message>
<source>Whether the discharge of {thing} is large enough is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob die Abblaseleitung von {thing} groß genug ist, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{pipe} in the discharge of {thing} is {size} mm; it must be at least {least} mm there.</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipe} in der Abblaseleitung von {thing} misst {size} mm; dort müssen es mindestens {least} mm sein.</translation>
</message>
<message>
<source>Make {pipes} as large as the discharge of {thing} needs.</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipes} so groß ausführen, wie die Abblaseleitung von {thing} es braucht.</translation>
</message>
<message>
<source>The discharge of {thing} goes through {valves}: nothing there may shut or stick.</source>
<extracomment>checks/discharge</extracomment>
<translation>Die Abblaseleitung von {thing} führt durch {valves}: Dort darf nichts schließen oder festsitzen.</translation>
</message>
<message>
<source>Take {valves} out of the discharge of {thing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>{valves} aus der Abblaseleitung von {thing} ausbauen.</translation>
</message>
<message>
<source>outside at low level</source>
<extracomment>checks/discharge</extracomment>
<translation>im Freien auf niedriger Höhe</translation>
</message>
<message>
<source>below the grating of a gully</source>
<extracomment>checks/discharge</extracomment>
<translation>unter dem Rost eines Ablaufs</translation>
</message>
<message>
<source>on a roof or at high level</source>
<extracomment>checks/discharge</extracomment>
<translation>auf einem Dach oder in großer Höhe</translation>
</message>
<message>
<source>in a soil stack</source>
<extracomment>checks/discharge</extracomment>
<translation>in einem Fallrohr</translation>
</message>
<message>
<source>inside the building</source>
<extracomment>checks/discharge</extracomment>
<translation>im Gebäude</translation>
</message>
<message>
<source>as the rules ask of such an end</source>
<extracomment>checks/discharge</extracomment>
<translation>so, wie die Regeln es für ein solches Ende verlangen</translation>
</message>
<message>
<source>let</source>
<extracomment>checks/discharge</extracomment>
<translation>ablassen</translation>
</message>
<message>
<source>lets</source>
<extracomment>checks/discharge</extracomment>
<translation>ablässt</translation>
</message>
<message>
<source>{end}, where {valves} {let} water out, is {place}.</source>
<extracomment>checks/discharge</extracomment>
<translation>{end}, wo {valves} Wasser {let}, liegt {place}.</translation>
</message>
<message>
<source>{end}, where {valves} {let} water out, is {place} and not {lacks}.</source>
<extracomment>checks/discharge</extracomment>
<translation>{end}, wo {valves} Wasser {let}, liegt {place} und nicht {lacks}.</translation>
</message>
<message>
<source>Whether {end}, where {valves} {let} water out, is safe is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob {end}, wo {valves} Wasser {let}, gefahrlos ist, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>The discharge of {thing} runs in plastic that may not be there: {pipes}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Die Abblaseleitung von {thing} verläuft in Kunststoff, der dort nicht sein darf: {pipes}.</translation>
</message>
<message>
<source>Whether the discharge of {thing} stands the heat is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob die Abblaseleitung von {thing} die Hitze aushält, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Run {pipes} in copper.</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipes} in Kupfer ausführen.</translation>
</message>
<message>
<source>Whether the discharge of {thing} falls all the way is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob die Abblaseleitung von {thing} durchweg fällt, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>below its drop of {drop} mm</source>
<extracomment>checks/discharge</extracomment>
<translation>unter dem Fallstück von {drop} mm</translation>
</message>
<message>
<source>{pipe} in the discharge of {thing}</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipe} in der Abblaseleitung von {thing}</translation>
</message>
<message>
<source>rises by {rise} mm</source>
<extracomment>checks/discharge</extracomment>
<translation>steigt um {rise} mm</translation>
</message>
<message>
<source>runs level</source>
<extracomment>checks/discharge</extracomment>
<translation>verläuft waagerecht</translation>
</message>
<message>
<source>falls {fall} mm in {length} m</source>
<extracomment>checks/discharge</extracomment>
<translation>fällt auf {length} m um {fall} mm</translation>
</message>
<message>
<source>; it must fall at least 1 in {one_in}.</source>
<extracomment>checks/discharge</extracomment>
<translation>; das Gefälle muss mindestens 1 zu {one_in} betragen.</translation>
</message>
<message>
<source>Whether the discharge of {thing} is short enough for its bore is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob die Abblaseleitung von {thing} für ihren Durchmesser kurz genug ist, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>The discharge of {thing} is too long for {size} mm: {length} m and {bends} bends count as {resistance} m, at most {limit} m is allowed.</source>
<extracomment>checks/discharge</extracomment>
<translation>Die Abblaseleitung von {thing} ist zu lang für {size} mm: {length} m und {bends} Bögen zählen wie {resistance} m, höchstens {limit} m sind erlaubt.</translation>
</message>
<message>
<source>{larger} mm would carry it.</source>
<extracomment>checks/discharge</extracomment>
<translation>{larger} mm würden genügen.</translation>
</message>
<message>
<source>No size of the table carries it: shorten it.</source>
<extracomment>checks/discharge</extracomment>
<translation>Keine Größe der Tabelle genügt: Leitung kürzen.</translation>
</message>
<message>
<source>Run the discharge of {thing} in {size} mm from the tundish to its end.</source>
<extracomment>checks/discharge</extracomment>
<translation>Die Abblaseleitung von {thing} vom Ablauftrichter bis zum Ende in {size} mm ausführen.</translation>
</message>
<message>
<source>Whether {pipe} runs straight down far enough below {tundish} is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob {pipe} unter {tundish} weit genug gerade hinabführt, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{pipe} runs {drop} mm straight down below {tundish}; it must be at least {least} mm.</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipe} führt unter {tundish} {drop} mm gerade hinab; es müssen mindestens {least} mm sein.</translation>
</message>
<message>
<source>Turn {pipe} so that it runs straight down for {least} mm below {tundish} first.</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipe} so drehen, dass es unter {tundish} zuerst {least} mm gerade hinabführt.</translation>
</message>
<message>
<source>{pipe} carries the discharge of {stores} together and is {size} mm;</source>
<extracomment>checks/discharge</extracomment>
<translation>{pipe} führt gemeinsam das Abblasen von {stores} und misst {size} mm;</translation>
</message>
<message>
<source>no size of the table is large enough: lead each to an end of its own.</source>
<extracomment>checks/discharge</extracomment>
<translation>keine Größe der Tabelle reicht aus: jede zu einem eigenen Ende führen.</translation>
</message>
<message>
<source>one size above the largest that one of them needs is {least} mm.</source>
<extracomment>checks/discharge</extracomment>
<translation>eine Größe über der größten, die eine davon braucht, sind {least} mm.</translation>
</message>
<message>
<source>Whether the common discharge of {stores} is large enough is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob die gemeinsame Abblaseleitung von {stores} groß genug ist, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Make the common discharge ({pipes}) {least} mm.</source>
<extracomment>checks/discharge</extracomment>
<translation>Die gemeinsame Abblaseleitung ({pipes}) in {least} mm ausführen.</translation>
</message>
<message>
<source>{thing} discharges through no tundish; whether it needs one rests on {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>{thing} bläst durch keinen Ablauftrichter ab; ob einer nötig ist, hängt an {missing}.</translation>
</message>
<message>
<source>{thing} discharges to {end} through no tundish.</source>
<extracomment>checks/discharge</extracomment>
<translation>{thing} bläst ohne Ablauftrichter nach {end} ab.</translation>
</message>
<message>
<source>Cut a tundish into the discharge of {thing}, close by the valve.</source>
<extracomment>checks/discharge</extracomment>
<translation>In die Abblaseleitung von {thing} nahe am Ventil einen Ablauftrichter einsetzen.</translation>
</message>
<message>
<source>{tundish} is out of sight: nobody sees when {valves} {let} water go.</source>
<extracomment>checks/discharge</extracomment>
<translation>{tundish} ist außer Sicht: Niemand sieht, wenn {valves} Wasser {let}.</translation>
</message>
<message>
<source>Whether {tundish} is where {valves} can be seen to let by is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Ob {tundish} dort ist, wo man {valves} abblasen sieht, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Put {tundish} in sight.</source>
<extracomment>checks/discharge</extracomment>
<translation>{tundish} in Sicht bringen.</translation>
</message>
<message>
<source>How far {thing} stands from its tundish is not known: {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>Wie weit {thing} vom Ablauftrichter entfernt steht, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{thing} stands {length} m from its tundish; whether that is too far rests on {missing}.</source>
<extracomment>checks/discharge</extracomment>
<translation>{thing} steht {length} m vom Ablauftrichter entfernt; ob das zu weit ist, hängt an {missing}.</translation>
</message>
<message>
<source>{thing} stands {length} m of pipe from {tundish}; at most {limit} m is allowed.</source>
<extracomment>checks/discharge</extracomment>
<translation>{thing} steht {length} m Rohr von {tundish} entfernt; höchstens {limit} m sind erlaubt.</translation>
</message>
<message>
<source>Move {tundish} closer: {pipe} {length} m long.</source>
<extracomment>checks/discharge</extracomment>
<translation>{tundish} näher heranrücken: {pipe} {length} m lang.</translation>
</message>
<message>
<source>The rises round the loop of {pipes} do not close: they miss by {by} m.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Die Anstiege im Ring aus {pipes} gehen nicht auf: Es fehlen {by} m.</translation>
</message>
<message>
<source>The heights given for {first} and {last} and the rise of {pipes} between them disagree by {by} m.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Die Höhen von {first} und {last} und der Anstieg von {pipes} dazwischen widersprechen sich um {by} m.</translation>
</message>
<message>
<source>{thing} rises or falls by {rise} m, {by} m more than its length of {length} m.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{thing} steigt oder fällt um {rise} m, das sind {by} m mehr als die Länge von {length} m.</translation>
</message>
<message>
<source>{ids} bear the same label: {label}.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{ids} tragen dieselbe Bezeichnung: {label}.</translation>
</message>
<message>
<source>Call them {labels}.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Umbenennen in {labels}.</translation>
</message>
<message>
<source>{one} looks joined to {other}, and is not.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{one} sieht mit {other} verbunden aus und ist es nicht.</translation>
</message>
<message>
<source>pipe {owner}</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Rohr {owner}</translation>
</message>
<message>
<source>the {port} port of {owner}</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Anschluss {port} von {owner}</translation>
</message>
<message>
<source>Join {one} to {other}.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{one} mit {other} verbinden.</translation>
</message>
<message>
<source>Neither end of pipe {pipe} is joined.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Kein Ende von Rohr {pipe} ist angeschlossen.</translation>
</message>
<message>
<source>One end of pipe {pipe} is not joined.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Ein Ende von Rohr {pipe} ist nicht angeschlossen.</translation>
</message>
<message>
<source>{thing} is joined to nothing.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{thing} ist mit nichts verbunden.</translation>
</message>
<message>
<source>Nothing is joined to {port} of {thing}.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Nichts ist angeschlossen: {port} von {thing}.</translation>
</message>
<message>
<source>the {port} port</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Anschluss {port}</translation>
</message>
<message>
<source>{one} and {other} lie on one another.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{one} und {other} liegen aufeinander.</translation>
</message>
<message>
<source>Move {part} clear of the other.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>{part} vom anderen wegrücken.</translation>
</message>
<message>
<source>lie on one another</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>liegen aufeinander</translation>
</message>
<message>
<source>meet within half a square of a bend</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>treffen sich weniger als ein halbes Feld neben einem Bogen</translation>
</message>
<message>
<source>meet within half a square of a port or tee</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>treffen sich weniger als ein halbes Feld neben einem Anschluss oder T-Stück</translation>
</message>
<message>
<source>cross at a slant</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>kreuzen sich schräg</translation>
</message>
<message>
<source>Pipe {one} and pipe {other}</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Rohr {one} und Rohr {other}</translation>
</message>
<message>
<source>: they could be taken as joined.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>: Man könnte sie für verbunden halten.</translation>
</message>
<message>
<source>Route pipe {pipe} anew, around what is in its way.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Rohr {pipe} neu verlegen, um das herum, was im Weg ist.</translation>
</message>
<message>
<source>No heat source, store or main is joined to {parts}.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Kein Wärmeerzeuger, Speicher oder Hausanschluss ist mit {parts} verbunden.</translation>
</message>
<message>
<source>No heat source, store or main is joined to {parts} and {more} more parts.</source>
<extracomment>checks/drawing_itself</extracomment>
<translation>Kein Wärmeerzeuger, Speicher oder Hausanschluss ist mit {parts} und {more} weiteren Bauteilen verbunden.</translation>
</message>
<message>
<source>is it set right?</source>
<extracomment>checks/flow</extracomment>
<translation>Ist das richtig eingestellt?</translation>
</message>
<message>
<source>{thing} stays shut at pump run-on: it opens at {set} kPa, the pump raises {across} kPa, and {heat} gets {flow} l/min.</source>
<extracomment>checks/flow</extracomment>
<translation>{thing} bleibt beim Pumpennachlauf zu: Das Ventil öffnet bei {set} kPa, die Pumpe bringt {across} kPa, und {heat} bekommt {flow} l/min.</translation>
</message>
<message>
<source>{thing} opens in {situation}: it is set to {set} kPa, {across} kPa stand across it, and {flow} l/min go straight back.</source>
<extracomment>checks/flow</extracomment>
<translation>{thing} öffnet im Betriebszustand „{situation}“: eingestellt auf {set} kPa, {across} kPa liegen an, und {flow} l/min laufen geradewegs zurück.</translation>
</message>
<message>
<source>does all that it serves get enough water?</source>
<extracomment>checks/flow</extracomment>
<translation>Bekommt alles, was daran hängt, genug Wasser?</translation>
</message>
<message>
<source>does it get enough water?</source>
<extracomment>checks/flow</extracomment>
<translation>Ist dort genug Wasser?</translation>
</message>
<message>
<source>{thing} gets {flow} l/min in {situation}, {share} % of the {design} l/min it should have.</source>
<extracomment>checks/flow</extracomment>
<translation>{thing} bekommt im Betriebszustand „{situation}“ {flow} l/min, das sind {share} % der {design} l/min, die es sein sollten.</translation>
</message>
<message>
<source>does heat stray to what is not called?</source>
<extracomment>checks/flow</extracomment>
<translation>Verirrt sich Wärme dorthin, wo keine gefordert ist?</translation>
</message>
<message>
<source>{thing} is not called in {situation}, and {flow} l/min run {way} through it.</source>
<extracomment>checks/flow</extracomment>
<translation>{thing} ist im Betriebszustand „{situation}“ nicht gefordert, und doch fließen {flow} l/min {way} hindurch.</translation>
</message>
<message>
<source>forward</source>
<extracomment>checks/flow</extracomment>
<translation>vorwärts</translation>
</message>
<message>
<source>backward</source>
<extracomment>checks/flow</extracomment>
<translation>rückwärts</translation>
</message>
<message>
<source>Fit a check valve at the {port} of {thing}, letting water {way} it only.</source>
<extracomment>checks/flow</extracomment>
<translation>Am Anschluss {port} von {thing} einen Rückflussverhinderer einbauen, der Wasser nur {way} lässt.</translation>
</message>
<message>
<source>out of</source>
<extracomment>checks/flow</extracomment>
<translation>hinaus</translation>
</message>
<message>
<source>into</source>
<extracomment>checks/flow</extracomment>
<translation>hinein</translation>
</message>
<message>
<source>does the water that it drives run too fast?</source>
<extracomment>checks/flow</extracomment>
<translation>Fließt das geförderte Wasser zu schnell?</translation>
</message>
<message>
<source>In {thing} water runs at {speed} m/s in {situation} ({flow} l/min in {bore} mm bore); above {most} m/s it is heard.</source>
<extracomment>checks/flow</extracomment>
<translation>In {thing} fließt das Wasser mit {speed} m/s (Betriebszustand „{situation}“, {flow} l/min bei {bore} mm Innendurchmesser); über {most} m/s hört man es.</translation>
</message>
<message>
<source>is it strong enough?</source>
<extracomment>checks/flow</extracomment>
<translation>Ist die Pumpe stark genug?</translation>
</message>
<message>
<source>{thing} brings {flow} l/min in {situation}, and what it serves is designed for {design}.{otherwise}</source>
<extracomment>checks/flow</extracomment>
<translation>{thing} bringt im Betriebszustand „{situation}“ {flow} l/min, und was daran hängt, ist auf {design} ausgelegt.{otherwise}</translation>
</message>
<message>
<source>does it always get its least flow?</source>
<extracomment>checks/flow</extracomment>
<translation>Wird der Mindestvolumenstrom immer erreicht?</translation>
</message>
<message>
<source>{thing} gets {flow} l/min in {situation} and needs {least}.{otherwise}</source>
<extracomment>checks/flow</extracomment>
<translation>{thing} bekommt im Betriebszustand „{situation}“ {flow} l/min und braucht {least}.{otherwise}</translation>
</message>
<message>
<source>{flow} l/min run backward through {thing} in {situation}; it needs {least} forward.</source>
<extracomment>checks/flow</extracomment>
<translation>{flow} l/min fließen im Betriebszustand „{situation}“ rückwärts durch {thing}; vorwärts müssen es {least} sein.</translation>
</message>
<message>
<source>heating water</source>
<extracomment>checks</extracomment>
<translation>Heizwasser</translation>
</message>
<message>
<source>a cistern's water</source>
<extracomment>checks</extracomment>
<translation>Wasser aus einem Behälter</translation>
</message>
<message>
<source>foul water</source>
<extracomment>checks</extracomment>
<translation>Schmutzwasser</translation>
</message>
<message>
<source>{part} with what stands level with it</source>
<extracomment>checks/heat_source</extracomment>
<translation>{part} mit dem, was auf gleicher Höhe daran steht,</translation>
</message>
<message>
<source>{parts} stands higher than all that it is joined to</source>
<extracomment>checks/heat_source</extracomment>
<translation>{parts} steht höher als alles, woran es angeschlossen ist</translation>
</message>
<message>
<source>{parts} stand higher than all that they are joined to</source>
<extracomment>checks/heat_source</extracomment>
<translation>{parts} stehen höher als alles, woran sie angeschlossen sind</translation>
</message>
<message>
<source>, at {height} m</source>
<extracomment>checks/heat_source</extracomment>
<translation>, auf {height} m</translation>
</message>
<message>
<source>, and nothing there lets air out.</source>
<extracomment>checks/heat_source</extracomment>
<translation>, und nichts lässt dort Luft heraus.</translation>
</message>
<message>
<source>Whether air can get out at the high points of {thing}'s water rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ob an den Hochpunkten des Wassers von {thing} Luft entweichen kann, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Fit an air vent at the high point, by {part}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Am Hochpunkt bei {part} einen Entlüfter einbauen.</translation>
</message>
<message>
<source>The pipework of {thing}</source>
<extracomment>checks/heat_source</extracomment>
<translation>Das Rohrnetz von {thing}</translation>
</message>
<message>
<source>The pipework between {valves} and {more} more valves</source>
<extracomment>checks/heat_source</extracomment>
<translation>Das Rohrnetz zwischen {valves} und {more} weiteren Ventilen</translation>
</message>
<message>
<source>The pipework between {valves}</source>
<extracomment>checks/heat_source</extracomment>
<translation>Das Rohrnetz zwischen {valves}</translation>
</message>
<message>
<source>The pipework behind {valves}</source>
<extracomment>checks/heat_source</extracomment>
<translation>Das Rohrnetz hinter {valves}</translation>
</message>
<message>
<source>({length} m) has no drain.</source>
<extracomment>checks/heat_source</extracomment>
<translation>({length} m) hat keine Entleerung.</translation>
</message>
<message>
<source>has no drain at its low point: {lowest} lies {below} m below {drains}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>hat an seinem Tiefpunkt keine Entleerung: {lowest} liegt {below} m unter {drains}.</translation>
</message>
<message>
<source>Whether the pipework of {thing} can be drained rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ob das Rohrnetz von {thing} entleert werden kann, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Tee in a drain by {part}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Bei {part} eine Entleerung mit T-Stück einbauen.</translation>
</message>
<message>
<source>the vessel in {part}</source>
<extracomment>checks/heat_source</extracomment>
<translation>das Ausdehnungsgefäß in {part}</translation>
</message>
<message>
<source>Filled cold to {fill} bar, {vessels} {holds} {held} l of water and should hold {reserve} l in reserve</source>
<extracomment>checks/heat_source</extracomment>
<translation>Kalt auf {fill} bar gefüllt, {holds} {vessels} {held} l Wasser, und {reserve} l sollten als Vorlage darin sein</translation>
</message>
<message>
<source>: that takes {least} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>: Das verlangt {least} bar.</translation>
</message>
<message>
<source>holds</source>
<extracomment>checks/heat_source</extracomment>
<translation>fasst</translation>
</message>
<message>
<source>hold</source>
<extracomment>checks/heat_source</extracomment>
<translation>fassen</translation>
</message>
<message>
<source>{thing}: whether its vessel holds a reserve when cold rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing}: Ob das Ausdehnungsgefäß kalt eine Wasservorlage hat, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Fill the cold circuit to {right} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Den kalten Kreis auf {right} bar füllen.</translation>
</message>
<message>
<source>{thing} has no filling link on its sealed water.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat an seinem geschlossenen Kreis keine Füllverbindung.</translation>
</message>
<message>
<source>Tee in a filling link with a double check valve by {thing}, on its {port}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Bei {thing} am Anschluss {port} eine Füllverbindung mit doppeltem Rückflussverhinderer einbauen.</translation>
</message>
<message>
<source>{link} is left connected: after filling it must be taken off.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{link} bleibt verbunden: Nach dem Füllen muss sie abgenommen werden.</translation>
</message>
<message>
<source>Whether {link} is taken off after filling is not known.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ob {link} nach dem Füllen abgenommen wird, ist nicht bekannt.</translation>
</message>
<message>
<source>Take {link} off after filling.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{link} nach dem Füllen abnehmen.</translation>
</message>
<message>
<source>{link} has no double check valve: heating water can be drawn back into the main.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{link} hat keinen doppelten Rückflussverhinderer: Heizwasser kann in den Hausanschluss zurückgesaugt werden.</translation>
</message>
<message>
<source>Whether {link} has a double check valve is not known.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ob {link} einen doppelten Rückflussverhinderer hat, ist nicht bekannt.</translation>
</message>
<message>
<source>Fit a double check valve in {link}, on its supply side.</source>
<extracomment>checks/heat_source</extracomment>
<translation>In {link} auf der Zulaufseite einen doppelten Rückflussverhinderer einbauen.</translation>
</message>
<message>
<source>{thing} has no filter on its water.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat keinen Filter in seinem Wasser.</translation>
</message>
<message>
<source>Cut a dirt separator {how} into the pipe on {thing}'s {port}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>In das Rohr am Anschluss {port} von {thing} einen Schlammabscheider {how} einsetzen.</translation>
</message>
<message>
<source>with valves</source>
<extracomment>checks/heat_source</extracomment>
<translation>mit Ventilen</translation>
</message>
<message>
<source>without valves</source>
<extracomment>checks/heat_source</extracomment>
<translation>ohne Ventile</translation>
</message>
<message>
<source>{thing} has no pressure gauge on its sealed water: nothing shows whether it is filled.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat kein Manometer an seinem geschlossenen Kreis: Nichts zeigt, ob er gefüllt ist.</translation>
</message>
<message>
<source>Tee in a pressure gauge by {thing}, on its {port}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Bei {thing} am Anschluss {port} ein Manometer mit T-Stück einbauen.</translation>
</message>
<message>
<source>Every loop by which {thing}'s heat could rise to an emitter or coil can be shut</source>
<extracomment>checks/heat_source</extracomment>
<translation>Jeder Umlauf, durch den die Wärme von {thing} zu einer Heizfläche oder Heizschlange aufsteigen könnte, kann geschlossen werden</translation>
</message>
<message>
<source>With {valves} shut, {thing}'s heat cannot rise by itself to any emitter or coil</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ist {valves} zu, so kann die Wärme von {thing} nicht von selbst zu einer Heizfläche oder Heizschlange aufsteigen</translation>
</message>
<message>
<source>{thing}'s heat cannot rise by itself to any emitter or coil: there is no loop without a pump</source>
<extracomment>checks/heat_source</extracomment>
<translation>Die Wärme von {thing} kann nicht von selbst zu einer Heizfläche oder Heizschlange aufsteigen: Es gibt keinen Umlauf ohne Pumpe</translation>
</message>
<message>
<source>, and that heat cannot be switched off.</source>
<extracomment>checks/heat_source</extracomment>
<translation>, und diese Wärme lässt sich nicht abschalten.</translation>
</message>
<message>
<source>. Whether that heat can be switched off is not known.</source>
<extracomment>checks/heat_source</extracomment>
<translation>. Ob sich diese Wärme abschalten lässt, ist nicht bekannt.</translation>
</message>
<message>
<source>Join a radiator without valves, above {thing}, to its flow and return, with no pump between.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Über {thing} einen Heizkörper ohne Ventile an Vorlauf und Rücklauf anschließen, ohne Pumpe dazwischen.</translation>
</message>
<message>
<source>{thing} heats a sealed circuit, and no hand-reset high limit is stated for it.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} heizt einen geschlossenen Kreis, und es ist kein von Hand zu entriegelnder Sicherheitstemperaturbegrenzer angegeben.</translation>
</message>
<message>
<source>{thing} heats a sealed circuit, and its high limit resets itself: a hand-reset one is needed.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} heizt einen geschlossenen Kreis, und der Sicherheitstemperaturbegrenzer stellt sich selbst zurück: Er muss von Hand zu entriegeln sein.</translation>
</message>
<message>
<source>Whether its heat can be switched off is not known.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ob sich seine Wärme abschalten lässt, ist nicht bekannt.</translation>
</message>
<message>
<source>Use a hand-reset high limit on {thing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>An {thing} einen von Hand zu entriegelnden Sicherheitstemperaturbegrenzer verwenden.</translation>
</message>
<message>
<source>are</source>
<extracomment>checks/heat_source</extracomment>
<translation>sind</translation>
</message>
<message>
<source>is</source>
<extracomment>checks/heat_source</extracomment>
<translation>ist</translation>
</message>
<message>
<source>{pipes} {are} plastic and joined to {thing}, which cannot be switched off, with no metal between.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{pipes} {are} aus Kunststoff und ohne Metall dazwischen mit {thing} verbunden, einem Wärmeerzeuger, der sich nicht abschalten lässt.</translation>
</message>
<message>
<source>{pipes} {are} plastic and joined to {thing}: the first {limit} m must be metal.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{pipes} {are} aus Kunststoff und mit {thing} verbunden: Die ersten {limit} m müssen aus Metall sein.</translation>
</message>
<message>
<source>{pipes} {are} plastic, {from} m from {thing} along the pipe: the first {limit} m must be metal.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{pipes} {are} aus Kunststoff, {from} m Rohr von {thing} entfernt: Die ersten {limit} m müssen aus Metall sein.</translation>
</message>
<message>
<source>Whether plastic pipe is too near {thing} rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ob Kunststoffrohr zu nahe an {thing} liegt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} has no safety valve on its water: nothing limits the pressure.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat kein Sicherheitsventil an seinem Wasser: Nichts begrenzt den Druck.</translation>
</message>
<message>
<source>{thing} has no safety valve that its pressure always reaches: {device} lies beyond {blocker}, which does not let pressure through both ways.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat kein Sicherheitsventil, das sein Druck immer erreicht: {device} liegt hinter {blocker}, und dort geht der Druck nicht in beide Richtungen durch.</translation>
</message>
<message>
<source>Is {valve} close by {thing}? It rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Sitzt {valve} nahe an {thing}? Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} has no safety valve on its flow: {valve} stands elsewhere on its water.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat kein Sicherheitsventil am Vorlauf: {valve} sitzt anderswo an seinem Wasser.</translation>
</message>
<message>
<source>{thing} reaches {valve} from its flow only through {blockers}, which can block.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} erreicht {valve} vom Vorlauf aus nur durch {blockers}, und dort kann es verstopfen.</translation>
</message>
<message>
<source>The safety valve nearest to the flow of {thing}, {valve}, stands {at_least}{length} m of pipe away, not within {limit} m.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Das Sicherheitsventil, das dem Vorlauf von {thing} am nächsten ist ({valve}), sitzt {at_least}{length} m Rohr entfernt und nicht innerhalb von {limit} m.</translation>
</message>
<message>
<source>at least</source>
<extracomment>checks/heat_source</extracomment>
<translation>mindestens</translation>
</message>
<message>
<source>{thing} can be cut off from {devices} by shutting {valves}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} kann von {devices} abgesperrt werden, indem man {valves} schließt.</translation>
</message>
<message>
<source>{valve} opens at {setting} bar; {weak} must not see more than {lowest} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{valve} öffnet bei {setting} bar; {weak} darf nicht mehr als {lowest} bar ausgesetzt sein.</translation>
</message>
<message>
<source>Does {valve} open before anything it protects is overstrained? It rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Öffnet {valve}, bevor etwas von dem überlastet wird, was davon geschützt ist? Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Fit {valve} set at {lowest} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{valve} mit einem Ansprechdruck von {lowest} bar einbauen.</translation>
</message>
<message>
<source>{valves} can blow off {capacity} kW</source>
<extracomment>checks/heat_source</extracomment>
<translation>{valves} kann {capacity} kW abblasen</translation>
</message>
<message>
<source>the safety valves built in serve only their own</source>
<extracomment>checks/heat_source</extracomment>
<translation>die eingebauten Sicherheitsventile schützen nur ihr eigenes Bauteil</translation>
</message>
<message>
<source>{sources} can give {output} kW to this water, and</source>
<extracomment>checks/heat_source</extracomment>
<translation>{sources} kann {output} kW an dieses Wasser abgeben, und</translation>
</message>
<message>
<source>Can {valves} blow off all the heat of {sources}? It rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Kann {valves} die ganze Wärme von {sources} abblasen? Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Fit {valve} with a capacity of {needed} kW at least.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{valve} mit einer Abblaseleistung von mindestens {needed} kW einbauen.</translation>
</message>
<message>
<source>{thing} is on a sealed circuit; whether its heat can be switched off is not known.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} liegt an einem geschlossenen Kreis; ob sich die Wärme abschalten lässt, ist nicht bekannt.</translation>
</message>
<message>
<source>{thing} gives heat that cannot be switched off, and its water is sealed: it reaches no open vent and no feed cistern.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} gibt Wärme ab, die sich nicht abschalten lässt, und der Kreis ist geschlossen: Er erreicht keine offene Entlüftung und keinen Vorlagebehälter.</translation>
</message>
<message>
<source>{thing} has no expansion vessel on its water: nothing takes up the swell when it heats.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat kein Ausdehnungsgefäß an seinem Wasser: Nichts nimmt die Ausdehnung beim Heizen auf.</translation>
</message>
<message>
<source>{thing} has no expansion vessel it can always use: {device} lies beyond {blocker}, which does not let water out and back.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{thing} hat kein Ausdehnungsgefäß, das immer nutzbar ist: {device} liegt hinter {blocker}, und dort kommt Wasser nicht hinaus und wieder zurück.</translation>
</message>
<message>
<source>{vessel} joins on the outlet side of {pumps}: running, the pump takes its pressure off the rest of the circuit.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} sitzt auf der Druckseite von {pumps}: Läuft die Pumpe, nimmt sie dem übrigen Kreis ihren Druck weg.</translation>
</message>
<message>
<source>In the situation {situation} it falls to {lowest} bar at {place},</source>
<extracomment>checks/heat_source</extracomment>
<translation>Im Betriebszustand „{situation}“ fällt er an {place} auf {lowest} bar,</translation>
</message>
<message>
<source>where there must be {least} bar at least.</source>
<extracomment>checks/heat_source</extracomment>
<translation>wo mindestens {least} bar sein müssen.</translation>
</message>
<message>
<source>How low it falls rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Wie tief er fällt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Move {pump} into {pipe}, so that water comes from the tee of {vessel} to its inlet.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{pump} in {pipe} versetzen, sodass das Wasser vom T-Stück von {vessel} zum Pumpeneintritt kommt.</translation>
</message>
<message>
<source>{vessel} is charged to {charge} bar, above the {fill} bar the circuit is filled to: it holds no water in reserve.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} hat einen Vordruck von {charge} bar, mehr als die {fill} bar, auf die der Kreis gefüllt ist: Das Gefäß enthält keine Wasservorlage.</translation>
</message>
<message>
<source>{vessel} is charged to {charge} bar and needs {least} bar to carry the water above it.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} hat einen Vordruck von {charge} bar und braucht {least} bar, um das Wasser darüber zu tragen.</translation>
</message>
<message>
<source>{vessel} is charged to just the {fill} bar that the circuit is filled to: it holds no water in reserve.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} hat als Vordruck gerade die {fill} bar, auf die der Kreis gefüllt ist: Das Gefäß enthält keine Wasservorlage.</translation>
</message>
<message>
<source>Is {vessel} charged as it must be? It rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Hat {vessel} den richtigen Vordruck? Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Charge {vessel} to {right} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} auf einen Vordruck von {right} bar bringen.</translation>
</message>
<message>
<source>Charge {vessel} to {right} bar and fill the cold circuit to {fill} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} auf einen Vordruck von {right} bar bringen und den kalten Kreis auf {fill} bar füllen.</translation>
</message>
<message>
<source>{content} l of water swells by {swell} l;</source>
<extracomment>checks/heat_source</extracomment>
<translation>{content} l Wasser dehnen sich um {swell} l aus;</translation>
</message>
<message>
<source>{vessels} would have to hold {needed} l in all and {hold} {volume} l.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessels} müsste zusammen {needed} l haben und {hold} {volume} l.</translation>
</message>
<message>
<source>{vessels}, charged to {charge} bar, can take up nothing below {final} bar: no size would do.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessels}, auf {charge} bar Vordruck, kann unter {final} bar nichts aufnehmen: Keine Größe würde genügen.</translation>
</message>
<message>
<source>Filled to {fill} bar too little room is left for it.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Auf {fill} bar gefüllt, bleibt dafür zu wenig Raum.</translation>
</message>
<message>
<source>It must take up the swell and {reserve} l in reserve between {charge} and {final} bar.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Aufzunehmen sind die Ausdehnung und {reserve} l Wasservorlage zwischen {charge} und {final} bar.</translation>
</message>
<message>
<source>With {valves} shut, {thing} is left without {lost}:</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ist {valves} zu, so bleibt {thing} ohne {lost}:</translation>
</message>
<message>
<source>Only secured valves do it: make sure that they stay secured open.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Nur gesicherte Ventile tun es: Stellen Sie sicher, dass sie gesichert offen bleiben.</translation>
</message>
<message>
<source>Is {vessels} large enough for {thing}?</source>
<extracomment>checks/heat_source</extracomment>
<translation>Ist {vessels} groß genug für {thing}?</translation>
</message>
<message>
<source>It rests on what is not known: {missing}.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Das hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Water with glycol swells more than water; by how much is not reckoned here.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Wasser mit Glykol dehnt sich stärker aus als Wasser; um wie viel, wird hier nicht gerechnet.</translation>
</message>
<message>
<source>The temperatures are beyond those reckoned here.</source>
<extracomment>checks/heat_source</extracomment>
<translation>Die Temperaturen liegen außerhalb dessen, was hier gerechnet wird.</translation>
</message>
<message>
<source>Fit {vessel} in the next size that is large enough, {size} l.</source>
<extracomment>checks/heat_source</extracomment>
<translation>{vessel} in der nächsten ausreichenden Größe einbauen, {size} l.</translation>
</message>
<message>
<source>Whether {cisterns} holds what {baths} draws, {draws} l, is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {cisterns} enthält, was {baths} zapft, nämlich {draws} l, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{cisterns} holds {content} l; {baths} draws about {draws} l, so it can run dry.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{cisterns} enthält {content} l; {baths} zapft etwa {draws} l, also kann der Behälter leerlaufen.</translation>
</message>
<message>
<source>Fit a cistern that holds {size} l at least in place of {cistern}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Statt {cistern} einen Behälter mit mindestens {size} l einbauen.</translation>
</message>
<message>
<source>The water in {cisterns} stands at {level} m. {parts} {verb} up to {by} m higher, and never {fill}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Das Wasser in {cisterns} steht auf {level} m. {parts} {verb} bis zu {by} m höher und {fill} sich nie.</translation>
</message>
<message>
<source>stand</source>
<extracomment>checks/open_vented</extracomment>
<translation>stehen</translation>
</message>
<message>
<source>fill</source>
<extracomment>checks/open_vented</extracomment>
<translation>füllen</translation>
</message>
<message>
<source>fills</source>
<extracomment>checks/open_vented</extracomment>
<translation>füllt</translation>
</message>
<message>
<source>Whether the water in {cisterns} stands above all that it feeds is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob das Wasser in {cisterns} über allem steht, was davon gespeist wird, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Raise {cistern} until its water stands at {level} m.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{cistern} anheben, bis der Wasserspiegel auf {level} m liegt.</translation>
</message>
<message>
<source>{cisterns} {verb} {holds} l, and the {litres} l of water that {they} swell by {swell} l.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{cisterns} {verb} {holds} l, und die {litres} l Wasser, die {they}, dehnen sich um {swell} l aus.</translation>
</message>
<message>
<source>{cisterns} {verb} {holds} l; no feed cistern should hold less than {smallest} l.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{cisterns} {verb} {holds} l; kein Vorlagebehälter sollte weniger als {smallest} l fassen.</translation>
</message>
<message>
<source>it feeds</source>
<extracomment>checks/open_vented</extracomment>
<translation>er speist</translation>
</message>
<message>
<source>they feed</source>
<extracomment>checks/open_vented</extracomment>
<translation>sie speisen</translation>
</message>
<message>
<source>Whether {cisterns} takes up what the heating water gains is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {cisterns} aufnimmt, was das Heizwasser an Volumen gewinnt, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Fit a cistern that holds {litres} l in place of {cistern}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Statt {cistern} einen Behälter mit {litres} l einbauen.</translation>
</message>
<message>
<source>{cistern} feeds both heating water and hot water: the two can mix.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{cistern} speist Heizwasser und Warmwasser: Beide können sich mischen.</translation>
</message>
<message>
<source>{cistern} is said to serve {serves}, but feeds {feeds} water: the two would share it.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{cistern} soll für {serves} da sein, speist aber {feeds}: Beide würden ihn sich teilen.</translation>
</message>
<message>
<source>{thing} has an open vent but no cold feed: water that is lost is not made up.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} hat eine offene Entlüftung, aber keine Speiseleitung: Verlorenes Wasser wird nicht ersetzt.</translation>
</message>
<message>
<source>{thing} has an open vent but no cold feed it can always use: {device} lies beyond {blocker}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} hat eine offene Entlüftung, aber keine Speiseleitung, die immer nutzbar ist: {device} liegt hinter {blocker}.</translation>
</message>
<message>
<source>{thing} can be cut off from its cold feed, {devices}, by shutting {valves}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} kann von der Speiseleitung ({devices}) abgesperrt werden, indem man {valves} schließt.</translation>
</message>
<message>
<source>{thing} is fed from a cistern but has no open vent: steam and swelling water have no way out.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} wird aus einem Behälter gespeist, hat aber keine offene Entlüftung: Dampf und Ausdehnungswasser können nicht entweichen.</translation>
</message>
<message>
<source>{thing} is fed from a cistern but has no open vent it can always use: {device} lies beyond {blocker}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} wird aus einem Behälter gespeist, hat aber keine offene Entlüftung, die immer nutzbar ist: {device} liegt hinter {blocker}.</translation>
</message>
<message>
<source>{thing} is fed from a cistern and has no open vent; whether its feed may be its vent too is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} wird aus einem Behälter gespeist und hat keine offene Entlüftung; ob die Speiseleitung zugleich Entlüftung sein darf, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{vent} is too small for {things}: {pipes} has a bore below {least} mm (copper of 22 mm).</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} ist zu klein für {things}: {pipes} hat weniger als {least} mm Innendurchmesser (Kupfer 22 mm).</translation>
</message>
<message>
<source>Whether {vent} has a bore of {least} mm all the way from {things} is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {vent} auf dem ganzen Weg von {things} {least} mm Innendurchmesser hat, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Run {pipes} in {size} mm.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{pipes} in {size} mm ausführen.</translation>
</message>
<message>
<source>{pumps} stands between {vent} and the feed of {feed}: it pumps water over, or draws air in.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{pumps} sitzt zwischen {vent} und der Speiseleitung von {feed}: Die Pumpe fördert Wasser über oder saugt Luft an.</translation>
</message>
<message>
<source>Join the feed of {feed} to the circuit right beside {vent}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Die Speiseleitung von {feed} unmittelbar neben {vent} an den Kreis anschließen.</translation>
</message>
<message>
<source>{pumps} can lift the water in {vent} by {head} m; the vent ends {height} m above the water, so it pumps over.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{pumps} kann das Wasser in {vent} um {head} m heben; die Entlüftung endet {height} m über dem Wasserspiegel, also läuft sie über.</translation>
</message>
<message>
<source>{pumps} sucks on {vent} with {head} m; {above} m of water stands above the vent's tee, so air is drawn in.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{pumps} saugt an {vent} mit {head} m; {above} m Wasser stehen über dem T-Stück der Entlüftung, also wird Luft angesaugt.</translation>
</message>
<message>
<source>{pumps} has {vent} and the feed of {feed} on its delivery side, and sucks on the circuit with up to {head} m; {above} m of water stands above it, so air can be drawn in.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{pumps} hat {vent} und die Speiseleitung von {feed} auf der Druckseite und saugt am Kreis mit bis zu {head} m; {above} m Wasser stehen darüber, also kann Luft angesaugt werden.</translation>
</message>
<message>
<source>{vent} ends {height} m above the water; {least} m is the least.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} endet {height} m über dem Wasserspiegel; {least} m sind das Mindeste.</translation>
</message>
<message>
<source>Whether {vent} can be pumped over or draw air is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {vent} überlaufen oder Luft ansaugen kann, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>End {vent} {height} mm above the water.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} {height} mm über dem Wasserspiegel enden lassen.</translation>
</message>
<message>
<source>{thing} has no open vent on its hot side: when it boils, steam has no way out.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} hat auf der Warmseite keine offene Entlüftung: Siedet das Wasser, kann Dampf nicht entweichen.</translation>
</message>
<message>
<source>{thing} has no open vent that its hot side can always use: {device} lies beyond {blocker}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{thing} hat keine offene Entlüftung, die der Warmseite immer offen steht: {device} liegt hinter {blocker}.</translation>
</message>
<message>
<source>Run an open vent in 22 mm from the top of {store} up over {cistern}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Eine offene Entlüftung in 22 mm oben von {store} bis über {cistern} führen.</translation>
</message>
<message>
<source>The pumps' pressure between {vent} and the feed of {feed} lifts the water in the vent by up to {up} m and lowers it by up to {down} m: it runs over, or air is drawn in.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Der Pumpendruck zwischen {vent} und der Speiseleitung von {feed} hebt das Wasser in der Entlüftung um bis zu {up} m und senkt es um bis zu {down} m: Es läuft über, oder Luft wird angesaugt.</translation>
</message>
<message>
<source>the flows cannot be solved</source>
<extracomment>checks/open_vented</extracomment>
<translation>die Volumenströme lassen sich nicht lösen</translation>
</message>
<message>
<source>The pumps' pressure between {vent} and the feed of {feed}, beside gravity hot water, is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Der Pumpendruck zwischen {vent} und der Speiseleitung von {feed}, neben Warmwasser durch Schwerkraft, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{vent} and the feed of {feed} join the circuit at places that no pipe joins within {most} mm: the pump's pressure comes between them.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} und die Speiseleitung von {feed} treffen an Stellen auf den Kreis, die kein Rohr innerhalb von {most} mm verbindet: Der Pumpendruck liegt dazwischen.</translation>
</message>
<message>
<source>{vent} and the feed of {feed} join the circuit {length} mm apart along the pipe; {most} mm is the most.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} und die Speiseleitung von {feed} treffen, am Rohr entlang gemessen, {length} mm auseinander auf den Kreis; {most} mm sind das Höchste.</translation>
</message>
<message>
<source>Whether {vent} and the feed of {feed} join the circuit within {most} mm of one another is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {vent} und die Speiseleitung von {feed} innerhalb von {most} mm voneinander auf den Kreis treffen, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Join {vent} to the circuit right beside the feed of {feed}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} unmittelbar neben der Speiseleitung von {feed} an den Kreis anschließen.</translation>
</message>
<message>
<source>{vent} ends over {over}, but {feeding} feeds the water it vents.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} endet über {over}, aber {feeding} speist das Wasser, das darüber entlüftet wird.</translation>
</message>
<message>
<source>Whether {vent} ends over {feeding}, which feeds its water, is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {vent} über {feeding} endet, wovon dieses Wasser gespeist wird, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Bring {vent} over {cistern}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} über {cistern} führen.</translation>
</message>
<message>
<source>{vent} does not rise all the way from {things}: {pipes} falls on the way up, by {by} m. Steam and air cannot pass a dip.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{vent} steigt nicht durchweg von {things} an: {pipes} fällt auf dem Weg nach oben um {by} m. An einer solchen Senke kommen Dampf und Luft nicht vorbei.</translation>
</message>
<message>
<source>Whether {vent} rises all the way from {things} is not known: {missing}.</source>
<extracomment>checks/open_vented</extracomment>
<translation>Ob {vent} durchweg von {things} ansteigt, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{store} is joined to {mains} with no cistern between: it is not made for mains pressure.</source>
<extracomment>checks/open_vented</extracomment>
<translation>{store} ist ohne Behälter dazwischen mit {mains} verbunden: Dieser Speicher ist nicht für den Druck des Hausanschlusses gebaut.</translation>
</message>
<message>
<source>Run the {ways} to {takers} and back in larger pipe: {sizes}.</source>
<extracomment>checks</extracomment>
<translation>{ways} zu {takers} und zurück in größerem Rohr ausführen: {sizes}.</translation>
</message>
<message>
<source>ways</source>
<extracomment>checks</extracomment>
<translation>Die Wege</translation>
</message>
<message>
<source>way</source>
<extracomment>checks</extracomment>
<translation>Den Weg</translation>
</message>
<message>
<source>{new} mm in place of {old} mm</source>
<extracomment>checks</extracomment>
<translation>{new} mm statt {old} mm</translation>
</message>
<message>
<source>Whether that is excused rests on what is not known: {missing}.</source>
<extracomment>checks</extracomment>
<translation>Ob das entschuldigt ist, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Join {device} to a tee right at the {port} of {thing}</source>
<extracomment>checks</extracomment>
<translation>{device} an ein T-Stück unmittelbar am Anschluss {port} von {thing} anschließen</translation>
</message>
<message>
<source>, with nothing between: take out {between}.</source>
<extracomment>checks</extracomment>
<translation>, ohne etwas dazwischen: {between} ausbauen.</translation>
</message>
<message>
<source>an expansion vessel</source>
<extracomment>checks</extracomment>
<translation>ein Ausdehnungsgefäß</translation>
</message>
<message>
<source>{vessel} of {size} l</source>
<extracomment>checks</extracomment>
<translation>{vessel} mit {size} l</translation>
</message>
<message>
<source>{vessel}, charged to {charge} bar,</source>
<extracomment>checks</extracomment>
<translation>{vessel}, Vordruck {charge} bar,</translation>
</message>
<message>
<source>Fit {vessel} on a tee right at the {port} of {thing}.</source>
<extracomment>checks</extracomment>
<translation>Unmittelbar am Anschluss {port} von {thing} {vessel} mit T-Stück einbauen.</translation>
</message>
<message>
<source>Fit a safety valve on the flow, right at {thing}, and lead its outlet to a safe place.</source>
<extracomment>checks</extracomment>
<translation>Ein Sicherheitsventil am Vorlauf unmittelbar bei {thing} einbauen und seine Abblaseleitung an einen sicheren Ort führen.</translation>
</message>
<message>
<source>{thing}: {question}</source>
<extracomment>checks</extracomment>
<translation>{thing}: {question}</translation>
</message>
<message>
<source>It can't be computed: {why}.</source>
<extracomment>checks</extracomment>
<translation>Es lässt sich nicht berechnen: {why}.</translation>
</message>
<message>
<source>the whole circuit</source>
<extracomment>checks</extracomment>
<translation>der ganze Kreis</translation>
</message>
<message>
<source>{name}, at {where}, {why}</source>
<extracomment>checks</extracomment>
<translation>{name}, bei {where}, {why}</translation>
</message>
<message>
<source>(Between {low} and {high} l/min if the resistances that the drawing does not give are twice or half the usual.)</source>
<extracomment>checks</extracomment>
<translation>(Zwischen {low} und {high} l/min, wenn die Widerstände, die die Zeichnung nicht nennt, doppelt oder halb so groß sind wie üblich.)</translation>
</message>
<message>
<source>heating and hot water together</source>
<extracomment>checks</extracomment>
<translation>Heizung und Warmwasser zusammen</translation>
</message>
<message>
<source>{thing}: whether its coil bears the sealed circuit rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob die Heizschlange den geschlossenen Kreis aushält, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>The coil of {store} bears {bears} bar at most; {valve} opens at {set} bar, so it must bear {needed} bar.</source>
<extracomment>checks/store</extracomment>
<translation>Die Heizschlange von {store} hält höchstens {bears} bar aus; {valve} öffnet bei {set} bar, also muss sie {needed} bar aushalten.</translation>
</message>
<message>
<source>Heated water can push back from {thing} into {main}: no check valve stands in the way.</source>
<extracomment>checks/store</extracomment>
<translation>Erwärmtes Wasser kann von {thing} nach {main} zurückdrücken: Auf dem Weg sitzt kein Rückflussverhinderer.</translation>
</message>
<message>
<source>{reducers} does not stop it: a reducing valve is no check valve.</source>
<extracomment>checks/store</extracomment>
<translation>{reducers} hält es nicht auf: Ein Druckminderer ist kein Rückflussverhinderer.</translation>
</message>
<message>
<source>{thing} names no motorised valve that its energy cut-out shuts: if its thermostat fails, nothing stops the heat.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} nennt kein Motorventil, das der Sicherheitstemperaturbegrenzer schließt: Versagt der Thermostat, hält nichts die Wärme auf.</translation>
</message>
<message>
<source>The energy cut-out of {store} acts on {valve}, which is no motorised valve.</source>
<extracomment>checks/store</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer von {store} wirkt auf {valve}, und das ist kein Motorventil.</translation>
</message>
<message>
<source>The energy cut-out of {store} acts on {valve}, a three-port valve: it is never shut both ways, so it does not serve.</source>
<extracomment>checks/store</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer von {store} wirkt auf {valve}, ein Dreiwegeventil: Es ist nie in beide Richtungen zu und taugt dafür nicht.</translation>
</message>
<message>
<source>The energy cut-out of {store} shuts {valve}, and heat still reaches its coil by another way.</source>
<extracomment>checks/store</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer von {store} schließt {valve}, und die Wärme erreicht die Heizschlange doch auf einem anderen Weg.</translation>
</message>
<message>
<source>The energy cut-out of {store} acts on {valve}, which does not rest shut when its supply fails: the cut-out cannot shut it.</source>
<extracomment>checks/store</extracomment>
<translation>Der Sicherheitstemperaturbegrenzer von {store} wirkt auf {valve}, das bei Stromausfall nicht schließt: Der Begrenzer kann es nicht schließen.</translation>
</message>
<message>
<source>{thing}: whether its energy cut-out can shut {valve} rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob der Sicherheitstemperaturbegrenzer {valve} schließen kann, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Whether that matters rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>Ob das eine Rolle spielt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} has no expansion relief valve: nothing limits the pressure when its water swells.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat kein Ausdehnungs-Sicherheitsventil: Nichts begrenzt den Druck, wenn das Wasser sich ausdehnt.</translation>
</message>
<message>
<source>{thing} has no expansion relief valve that its pressure always reaches: {device} lies beyond {blocker}, which does not let pressure through both ways.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat kein Ausdehnungs-Sicherheitsventil, das sein Druck immer erreicht: {device} liegt hinter {blocker}, und dort geht der Druck nicht in beide Richtungen durch.</translation>
</message>
<message>
<source>{thing}: whether an immersion heater is cut off rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob ein Elektro-Heizstab abgeschaltet wird, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} has an immersion heater of {power} kW without a cut-out.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat einen Elektro-Heizstab von {power} kW ohne Begrenzer.</translation>
</message>
<message>
<source>Fit an immersion heater with a hand-reset cut-out in {store}.</source>
<extracomment>checks/store</extracomment>
<translation>In {store} einen Elektro-Heizstab mit von Hand zu entriegelndem Begrenzer einbauen.</translation>
</message>
<message>
<source>It can be cut off from {others} too.</source>
<extracomment>checks/store</extracomment>
<translation>Auch von {others} kann abgesperrt werden.</translation>
</message>
<message>
<source>{thing} does not stand on the relief port of {store}, where it would feel the heat.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} sitzt nicht am Abblaseanschluss von {store}, wo die Wärme zu spüren wäre.</translation>
</message>
<message>
<source>Whether it must rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>Ob das sein muss, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing}: whether it is set right rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob das Ventil richtig eingestellt ist, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} is set at {set} °C, above {limit} °C: the store may boil before it opens.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} ist auf {set} °C eingestellt, mehr als {limit} °C: Der Speicher kann sieden, bevor es öffnet.</translation>
</message>
<message>
<source>{thing} is set at {set} bar, above the highest pressure of {store}, {limit} bar.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} ist auf {set} bar eingestellt, mehr als der Höchstdruck von {store}, {limit} bar.</translation>
</message>
<message>
<source>{reducers} is set at {set} bar, above {limit} bar, which is {share} of what {thing} opens at: it will weep at every heating.</source>
<extracomment>checks/store</extracomment>
<translation>{reducers} ist auf {set} bar eingestellt, mehr als {limit} bar, das sind {share} dessen, wobei {thing} öffnet: Es wird bei jedem Aufheizen tropfen.</translation>
</message>
<message>
<source>Whether the pressure that comes to {thing} is low enough rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>Ob der Druck, der bei {thing} ankommt, niedrig genug ist, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} is fed by {mains} with no reducing valve between.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} wird von {mains} ohne Druckminderer dazwischen gespeist.</translation>
</message>
<message>
<source>The main stands at {standing} bar, above the store's highest pressure, {limit} bar.</source>
<extracomment>checks/store</extracomment>
<translation>Der Hausanschluss steht unter {standing} bar, mehr als der Höchstdruck des Speichers, {limit} bar.</translation>
</message>
<message>
<source>Whether the main stands above what the store is made for is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>Ob der Hausanschluss unter mehr Druck steht, als der Speicher aushält, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>The main stands at {standing} bar, below the store's highest pressure, {limit} bar, but it rises at night.</source>
<extracomment>checks/store</extracomment>
<translation>Der Hausanschluss steht unter {standing} bar, weniger als der Höchstdruck des Speichers, {limit} bar, aber nachts steigt er.</translation>
</message>
<message>
<source>{thing} is made for {limit} bar at most, and {reducers} is set at {set} bar.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} ist für höchstens {limit} bar gebaut, und {reducers} ist auf {set} bar eingestellt.</translation>
</message>
<message>
<source>{thing}: whether a thermostat can stop its heat rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob ein Thermostat die Wärme abstellen kann, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} has no store thermostat that stops its heat.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat keinen Speicherthermostat, der die Wärme abstellt.</translation>
</message>
<message>
<source>{thing} has no store thermostat that stops its heat: shutting what {others} acts on does not.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat keinen Speicherthermostat, der die Wärme abstellt: Schließt, worauf {others} wirkt, so genügt das nicht.</translation>
</message>
<message>
<source>{thing}: whether it is charged as the reducing valve asks rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob der Vordruck zum Druckminderer passt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} is charged to {charge} bar, and {reducer} before it is set at {set} bar:</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat einen Vordruck von {charge} bar, und {reducer} davor ist auf {set} bar eingestellt:</translation>
</message>
<message>
<source>it takes up nothing until the pressure has climbed to its charge.</source>
<extracomment>checks/store</extracomment>
<translation>Das Gefäß nimmt nichts auf, bevor der Druck auf den Vordruck gestiegen ist.</translation>
</message>
<message>
<source>it is partly full of water before anything is heated.</source>
<extracomment>checks/store</extracomment>
<translation>Das Gefäß ist zum Teil voll Wasser, bevor etwas erwärmt wird.</translation>
</message>
<message>
<source>Charge {vessel} to {right} bar, as the reducing valve is set.</source>
<extracomment>checks/store</extracomment>
<translation>{vessel} auf einen Vordruck von {right} bar bringen, wie der Druckminderer eingestellt ist.</translation>
</message>
<message>
<source>{thing}: whether its vessel is large enough rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob das Ausdehnungsgefäß groß genug ist, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{thing} takes up {taken} l between {fill} bar and {final} bar, and the water of {stores} swells by {swell} l from {cold} °C to {hot} °C.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} nimmt zwischen {fill} bar und {final} bar {taken} l auf, und das Wasser von {stores} dehnt sich von {cold} °C bis {hot} °C um {swell} l aus.</translation>
</message>
<message>
<source>It is charged at {charge} bar.</source>
<extracomment>checks/store</extracomment>
<translation>Der Vordruck beträgt {charge} bar.</translation>
</message>
<message>
<source>A vessel charged at {fill} bar must hold {needed} l</source>
<extracomment>checks/store</extracomment>
<translation>Ein Gefäß mit {fill} bar Vordruck muss {needed} l fassen</translation>
</message>
<message>
<source>, so {size} l is the next size made.</source>
<extracomment>checks/store</extracomment>
<translation>, also ist {size} l die nächste hergestellte Größe.</translation>
</message>
<message>
<source>{thing} has no temperature relief valve: nothing lets its water out before it can boil.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat kein Temperatur-Sicherheitsventil: Nichts lässt das Wasser ab, bevor es sieden kann.</translation>
</message>
<message>
<source>{thing} has no temperature relief valve that its pressure always reaches: {device} lies beyond {blocker}, which does not let pressure through both ways.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} hat kein Temperatur-Sicherheitsventil, das sein Druck immer erreicht: {device} liegt hinter {blocker}, und dort geht der Druck nicht in beide Richtungen durch.</translation>
</message>
<message>
<source>{thing} is heated by {sources}, whose heat nothing can stop.</source>
<extracomment>checks/store</extracomment>
<translation>{thing} wird von {sources} erwärmt, und diese Wärme kann nichts abstellen.</translation>
</message>
<message>
<source>{thing}: whether its heat can be stopped rests on what is not known: {missing}.</source>
<extracomment>checks/store</extracomment>
<translation>{thing}: Ob die Wärme abgestellt werden kann, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Fit a temperature relief valve on the relief port of {store}, through a tundish.</source>
<extracomment>checks</extracomment>
<translation>Am Abblaseanschluss von {store} ein Temperatur-Sicherheitsventil einbauen, das durch einen Ablauftrichter abbläst.</translation>
</message>
<message>
<source>Fit an expansion relief valve on the cold feed right at {store}, through a tundish.</source>
<extracomment>checks</extracomment>
<translation>In den Kaltwasserzulauf unmittelbar bei {store} ein Ausdehnungs-Sicherheitsventil einbauen, das durch einen Ablauftrichter abbläst.</translation>
</message>
<message>
<source>Move {valve} to the relief port of {store}.</source>
<extracomment>checks</extracomment>
<translation>{valve} an den Abblaseanschluss von {store} versetzen.</translation>
</message>
<message>
<source>Fit a check valve in the cold feed of {store}, on the main's side of all that it needs.</source>
<extracomment>checks</extracomment>
<translation>In den Kaltwasserzulauf von {store} einen Rückflussverhinderer einbauen, auf der Seite des Hausanschlusses vor allem, was der Speicher braucht.</translation>
</message>
<message>
<source>Move {vessel} to the cold feed right at {store}</source>
<extracomment>checks</extracomment>
<translation>{vessel} an den Kaltwasserzulauf unmittelbar bei {store} versetzen</translation>
</message>
<message>
<source>Fit an expansion vessel for drinking water on the cold feed right at {store}.</source>
<extracomment>checks</extracomment>
<translation>In den Kaltwasserzulauf unmittelbar bei {store} ein Ausdehnungsgefäß für Trinkwasser einbauen.</translation>
</message>
<message>
<source>Fit an expansion vessel for drinking water of {size} l on the cold feed right at {store}.</source>
<extracomment>checks</extracomment>
<translation>In den Kaltwasserzulauf unmittelbar bei {store} ein Ausdehnungsgefäß für Trinkwasser mit {size} l einbauen.</translation>
</message>
<message>
<source>Charge {vessel} at {bar} bar, as the reducing valve is set.</source>
<extracomment>checks</extracomment>
<translation>{vessel} auf einen Vordruck von {bar} bar bringen, wie der Druckminderer eingestellt ist.</translation>
</message>
<message>
<source>Fit a vessel of {size} l, charged at {bar} bar, in place of {vessel}.</source>
<extracomment>checks</extracomment>
<translation>Statt {vessel} ein Ausdehnungsgefäß mit {size} l und {bar} bar Vordruck einbauen.</translation>
</message>
<message>
<source>Fit a reducing valve set at {bar} bar where the main comes in.</source>
<extracomment>checks</extracomment>
<translation>Wo der Hausanschluss hereinkommt, einen auf {bar} bar eingestellten Druckminderer einbauen.</translation>
</message>
<message>
<source>Set {valves} at {bar} bar.</source>
<extracomment>checks</extracomment>
<translation>{valves} auf {bar} bar einstellen.</translation>
</message>
<message>
<source>Fit a valve set at 90 °C in place of {valve}.</source>
<extracomment>checks</extracomment>
<translation>Statt {valve} ein auf 90 °C eingestelltes Ventil einbauen.</translation>
</message>
<message>
<source>Set {reducers} at {bar} bar.</source>
<extracomment>checks</extracomment>
<translation>{reducers} auf {bar} bar einstellen.</translation>
</message>
<message>
<source>Fit a valve set at {bar} bar in place of {valve}.</source>
<extracomment>checks</extracomment>
<translation>Statt {valve} ein auf {bar} bar eingestelltes Ventil einbauen.</translation>
</message>
<message>
<source>Whether it needs one rests on what is not known: {missing}.</source>
<extracomment>checks</extracomment>
<translation>Ob eines nötig ist, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>A competent person must confirm the structure.</source>
<extracomment>checks/structure</extracomment>
<translation>Ein Fachkundiger muss das Tragwerk bestätigen.</translation>
</message>
<message>
<source>Whether the floor carries {store} filled rests on what is not known: {missing}.</source>
<extracomment>checks/structure</extracomment>
<translation>Ob der Boden {store} gefüllt trägt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>{store} weighs {least}{weight} kg filled and loads the floor under it with {load} kN/m², more than the {capacity} kN/m² it is stated to carry.</source>
<extracomment>checks/structure</extracomment>
<translation>{store} wiegt gefüllt {least}{weight} kg und belastet den Boden darunter mit {load} kN/m², mehr als die angegebene Tragfähigkeit von {capacity} kN/m².</translation>
</message>
<message>
<source>{thing} mixes hot from {store}, which is reduced, with cold straight from {main}.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} mischt Warmes aus {store} unter gemindertem Druck mit Kaltem geradewegs aus {main}.</translation>
</message>
<message>
<source>At rest the main stands at {standing} bar and can lift the expansion relief, set at {relief} bar.</source>
<extracomment>checks/supply</extracomment>
<translation>In Ruhe steht der Hausanschluss unter {standing} bar und kann das Ausdehnungs-Sicherheitsventil öffnen, das auf {relief} bar eingestellt ist.</translation>
</message>
<message>
<source>Whether the main can lift the store's expansion relief is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob der Hausanschluss das Ausdehnungs-Sicherheitsventil des Speichers öffnen kann, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Take the cold of {thing} from behind {reducer}.</source>
<extracomment>checks/supply</extracomment>
<translation>Das Kaltwasser von {thing} hinter {reducer} abnehmen.</translation>
</message>
<message>
<source>{thing} can be given water above {limit} °C by {giver}:</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} kann von {giver} Wasser über {limit} °C bekommen:</translation>
</message>
<message>
<source>{valves} is set too high, to {setting} °C.</source>
<extracomment>checks/supply</extracomment>
<translation>{valves} ist zu hoch eingestellt, auf {setting} °C.</translation>
</message>
<message>
<source>no blending valve stands between.</source>
<extracomment>checks/supply</extracomment>
<translation>Kein Mischventil sitzt dazwischen.</translation>
</message>
<message>
<source>How heavy that is rests on what is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Wie schwer das wiegt, hängt an Unbekanntem: {missing}.</translation>
</message>
<message>
<source>Whether {thing} needs a blending valve, or has one that is set low enough, is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob {thing} ein Mischventil braucht oder eines hat, das niedrig genug eingestellt ist, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Set {valves} to {setting} °C.</source>
<extracomment>checks/supply</extracomment>
<translation>{valves} auf {setting} °C einstellen.</translation>
</message>
<message>
<source>Fit a blending valve set to {setting} °C before {thing}, with cold from {supply}.</source>
<extracomment>checks/supply</extracomment>
<translation>Vor {thing} ein auf {setting} °C eingestelltes Mischventil einbauen, mit Kaltwasser von {supply}.</translation>
</message>
<message>
<source>The cold of {taps} is drawn between {thing} and its check valve.</source>
<extracomment>checks/supply</extracomment>
<translation>Das Kaltwasser von {taps} wird zwischen {thing} und dem Rückflussverhinderer entnommen.</translation>
</message>
<message>
<source>Take the cold of {taps} from before {check}.</source>
<extracomment>checks/supply</extracomment>
<translation>Das Kaltwasser von {taps} vor {check} abnehmen.</translation>
</message>
<message>
<source>Heating water of {thing} can come into drinking water at {goal}.</source>
<extracomment>checks/supply</extracomment>
<translation>Heizwasser von {thing} kann bei {goal} ins Trinkwasser gelangen.</translation>
</message>
<message>
<source>Water of {thing} can be drawn back into {goal}.</source>
<extracomment>checks/supply</extracomment>
<translation>Wasser von {thing} kann nach {goal} zurückgesaugt werden.</translation>
</message>
<message>
<source>Foul water can be drawn back from {thing} into {goal}.</source>
<extracomment>checks/supply</extracomment>
<translation>Schmutzwasser kann von {thing} nach {goal} zurückgesaugt werden.</translation>
</message>
<message>
<source>On the way there is only {by}: that is not enough.</source>
<extracomment>checks/supply</extracomment>
<translation>Auf dem Weg ist nur {by}: Das genügt nicht.</translation>
</message>
<message>
<source>{link} is left connected, and without a double check valve.</source>
<extracomment>checks/supply</extracomment>
<translation>{link} bleibt verbunden und hat keinen doppelten Rückflussverhinderer.</translation>
</message>
<message>
<source>Heating water of {thing} is joined for good to drinking water at {goal}, only check valves between.</source>
<extracomment>checks/supply</extracomment>
<translation>Heizwasser von {thing} ist bei {goal} dauernd mit Trinkwasser verbunden, nur Rückflussverhinderer sitzen dazwischen.</translation>
</message>
<message>
<source>Whether water of {thing} can come into drinking water is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob Wasser von {thing} ins Trinkwasser gelangen kann, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Take {link} off after filling, and give it a double check valve.</source>
<extracomment>checks/supply</extracomment>
<translation>{link} nach dem Füllen abnehmen und mit einem doppelten Rückflussverhinderer ausrüsten.</translation>
</message>
<message>
<source>Take out {pipe}, which joins the two waters.</source>
<extracomment>checks/supply</extracomment>
<translation>{pipe} ausbauen, das die beiden Wasser verbindet.</translation>
</message>
<message>
<source>{thing} is at the end of {metres} m of uninsulated hot pipe from {start}; the guidance allows {limit} m of that diameter.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} sitzt am Ende von {metres} m ungedämmter Warmwasserleitung ab {start}; die Richtlinie erlaubt {limit} m bei diesem Durchmesser.</translation>
</message>
<message>
<source>Whether the hot pipe to {thing} is short enough is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob die Warmwasserleitung zu {thing} kurz genug ist, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Insulate the hot pipe to {thing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Die Warmwasserleitung zu {thing} dämmen.</translation>
</message>
<message>
<source>{thing} can pass {over} °C, and no blending valve set to {limit} °C or less stands before {outlets}.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} kann {over} °C abgeben, und vor {outlets} sitzt kein auf {limit} °C oder weniger eingestelltes Mischventil.</translation>
</message>
<message>
<source>Whether {thing} can send water to an outlet that is far too hot is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob {thing} viel zu heißes Wasser an eine Zapfstelle schicken kann, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Set the thermostat of {thing} to {set} °C.</source>
<extracomment>checks/supply</extracomment>
<translation>Den Thermostat von {thing} auf {set} °C einstellen.</translation>
</message>
<message>
<source>Fit a blending valve set to {set} °C in the hot outlet of {thing}.</source>
<extracomment>checks/supply</extracomment>
<translation>In den Warmwasseraustritt von {thing} ein auf {set} °C eingestelltes Mischventil einbauen.</translation>
</message>
<message>
<source>Whether hot water comes to {thing} within {limit} s is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob warmes Wasser binnen {limit} s bei {thing} ankommt, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>{thing} waits {wait} s for hot water: {litres} l stand in the pipe from {giver} and run out at {flow} l/min; {limit} s are allowed.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} wartet {wait} s auf warmes Wasser: {litres} l stehen in der Leitung von {giver} und laufen mit {flow} l/min ab; {limit} s sind erlaubt.</translation>
</message>
<message>
<source>{thing} never gets hot water: {giver} gives none.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} bekommt nie warmes Wasser: {giver} gibt keines.</translation>
</message>
<message>
<source>It gives {flow} l/min where {need} l/min are needed.</source>
<extracomment>checks/supply</extracomment>
<translation>Er gibt {flow} l/min, gebraucht werden {need} l/min.</translation>
</message>
<message>
<source>It runs at {running} bar where a mains-fed store needs {for_store} bar.</source>
<extracomment>checks/supply</extracomment>
<translation>Sein Fließdruck beträgt {running} bar, ein geschlossener Speicher braucht {for_store} bar.</translation>
</message>
<message>
<source>{outlet}, {rise} m above it, is left with {left} bar where {least} bar are needed.</source>
<extracomment>checks/supply</extracomment>
<translation>Für {outlet}, {rise} m darüber, bleiben {left} bar, gebraucht werden {least} bar.</translation>
</message>
<message>
<source>{thing} is too weak.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} ist zu schwach.</translation>
</message>
<message>
<source>Whether {thing} is strong enough for what it feeds is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob {thing} für alles stark genug ist, was daran hängt, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Water can leave {thing} backwards by its secondary return to {goal}: no check valve stops it.</source>
<extracomment>checks/supply</extracomment>
<translation>Wasser kann {thing} rückwärts durch die Zirkulationsleitung nach {goal} verlassen: Kein Rückflussverhinderer hält es auf.</translation>
</message>
<message>
<source>Water can leave {thing} backwards by its secondary return: no check valve stops it.</source>
<extracomment>checks/supply</extracomment>
<translation>Wasser kann {thing} rückwärts durch die Zirkulationsleitung verlassen: Kein Rückflussverhinderer hält es auf.</translation>
</message>
<message>
<source>Cut a check valve into the secondary return of {thing}, pointing to the store.</source>
<extracomment>checks/supply</extracomment>
<translation>In die Zirkulationsleitung von {thing} einen Rückflussverhinderer einsetzen, der zum Speicher zeigt.</translation>
</message>
<message>
<source>{main} comes to {things} with no valve on the way that can be shut by hand.</source>
<extracomment>checks/supply</extracomment>
<translation>{main} führt zu {things}, ohne dass auf dem Weg ein Ventil von Hand geschlossen werden kann.</translation>
</message>
<message>
<source>{more} more</source>
<extracomment>checks/supply</extracomment>
<translation>{more} weitere</translation>
</message>
<message>
<source>Fit a stop valve right at {main}.</source>
<extracomment>checks/supply</extracomment>
<translation>Unmittelbar bei {main} ein Absperrventil einbauen.</translation>
</message>
<message>
<source>{thing} is kept at {setting} °C: below {least} °C legionella can live in it.</source>
<extracomment>checks/supply</extracomment>
<translation>{thing} wird auf {setting} °C gehalten: Unter {least} °C können Legionellen darin leben.</translation>
</message>
<message>
<source>Whether {thing} is kept hot enough against legionella is not known: {missing}.</source>
<extracomment>checks/supply</extracomment>
<translation>Ob {thing} gegen Legionellen heiß genug gehalten wird, ist nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Set the thermostat of {thing} to {least} °C.</source>
<extracomment>checks/supply</extracomment>
<translation>Den Thermostat von {thing} auf {least} °C einstellen.</translation>
</message>
<message>
<source>Take {valves} out of the pipe.</source>
<extracomment>checks</extracomment>
<translation>{valves} aus dem Rohr ausbauen.</translation>
</message>
<message>
<source>Join {device} to the {port} right at {part}.</source>
<extracomment>checks</extracomment>
<translation>{device} an den Anschluss {port} unmittelbar bei {part} anschließen.</translation>
</message>
<message>
<source>{valve} (leg {leg})</source>
<extracomment>checks</extracomment>
<translation>{valve} (Weg {leg})</translation>
</message>
<message>
<source>{these} and {more} more</source>
<extracomment>checks</extracomment>
<translation>{these} und {more} weitere</translation>
</message>
<message>
<source>the ways of the circuit are too many to follow</source>
<extracomment>figures</extracomment>
<translation>die Wege des Kreises sind zu viele, um ihnen zu folgen</translation>
</message>
<message>
<source>it failed inside the program (</source>
<extracomment>figures</extracomment>
<translation>sie ist im Programm gescheitert (</translation>
</message>
<message>
<source>Volume of {name}</source>
<extracomment>figures</extracomment>
<translation>Volumen von {name}</translation>
</message>
<message>
<source>Charge of {name}</source>
<extracomment>figures</extracomment>
<translation>Vordruck von {name}</translation>
</message>
<message>
<source>no way that can carry its design flow leads there</source>
<extracomment>figures</extracomment>
<translation>kein Weg führt dorthin, der den Auslegungsvolumenstrom tragen kann</translation>
</message>
<message>
<source>another pump drives the same water in series, and how they share its head is not settled</source>
<extracomment>figures</extracomment>
<translation>eine andere Pumpe fördert dasselbe Wasser in Reihe, und wie sie sich die Förderhöhe teilen, steht nicht fest</translation>
</message>
<message>
<source>water goes another way round that has no design flow of its own</source>
<extracomment>figures</extracomment>
<translation>Wasser läuft auf einem anderen Weg um, der keinen eigenen Auslegungsvolumenstrom hat</translation>
</message>
<message>
<source>nothing that it serves has a design flow</source>
<extracomment>figures</extracomment>
<translation>nichts, was daran hängt, hat einen Auslegungsvolumenstrom</translation>
</message>
<message>
<source>resistances that the drawing does not give</source>
<extracomment>figures</extracomment>
<translation>Widerstände, die die Zeichnung nicht nennt</translation>
</message>
<message>
<source>Network: Todini and Pilati, 1988; friction: Darcy-Weisbach and Colebrook-White; fittings: loss factors of Perry's Chemical Engineers' Handbook. Resistances not given: common practice, no source.</source>
<extracomment>figures</extracomment>
<translation>Netz: Todini und Pilati, 1988; Reibung: Darcy-Weisbach und Colebrook-White; Formstücke: Verlustbeiwerte aus Perry’s Chemical Engineers’ Handbook. Nicht angegebene Widerstände: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Forced flow only; all thermostatic heads open; water without glycol at the design's mean temperature. An emitter's stated output is the nominal one, at 50 K (EN 442); its design flow carries what that comes to at the design's temperatures.</source>
<extracomment>figures</extracomment>
<translation>Nur Pumpenumlauf; alle Thermostatköpfe offen; Wasser ohne Glykol bei der mittleren Auslegungstemperatur. Die angegebene Leistung einer Heizfläche ist die Normleistung bei 50 K (EN 442); ihr Auslegungsvolumenstrom trägt, was sie bei den Auslegungstemperaturen abgibt.</translation>
</message>
<message>
<source>{name}, at {where}: {why}</source>
<extracomment>figures</extracomment>
<translation>{name}, bei {where}: {why}</translation>
</message>
<message>
<source>{name}, {valves} shut</source>
<extracomment>figures</extracomment>
<translation>{name}, {valves} zu</translation>
</message>
<message>
<source>Shut-off head of {name}</source>
<extracomment>figures</extracomment>
<translation>Nullförderhöhe von {name}</translation>
</message>
<message>
<source>Most flow of {name}</source>
<extracomment>figures</extracomment>
<translation>Größter Volumenstrom von {name}</translation>
</message>
<message>
<source>Resistances taken as usual, each named there</source>
<extracomment>figures</extracomment>
<translation>Als üblich angenommene Widerstände, jeder dort genannt</translation>
</message>
<message>
<source>its design flow</source>
<extracomment>figures</extracomment>
<translation>der Auslegungsvolumenstrom</translation>
</message>
<message>
<source>{part} is set to give its design flow</source>
<extracomment>figures</extracomment>
<translation>{part} ist auf den eigenen Auslegungsvolumenstrom eingestellt</translation>
</message>
<message>
<source>{part} is set to give {other} its design flow</source>
<extracomment>figures</extracomment>
<translation>{part} ist auf den Auslegungsvolumenstrom von {other} eingestellt</translation>
</message>
<message>
<source>as set</source>
<extracomment>figures</extracomment>
<translation>wie eingestellt</translation>
</message>
<message>
<source>{part}: {how}</source>
<extracomment>figures</extracomment>
<translation>{part}: {how}</translation>
</message>
<message>
<source>{part}: kv as {what}</source>
<extracomment>figures</extracomment>
<translation>{part}: Kv-Wert wie {what}</translation>
</message>
<message>
<source>{name}: its bends, not counted, as so much more pipe</source>
<extracomment>figures</extracomment>
<translation>{name}: seine Bögen, nicht gezählt, als so viel mehr Rohr</translation>
</message>
<message>
<source>of its length</source>
<extracomment>figures</extracomment>
<translation>seiner Länge</translation>
</message>
<message>
<source>% of its length</source>
<extracomment>figures</extracomment>
<translation>% seiner Länge</translation>
</message>
<message>
<source>usual {owner}</source>
<extracomment>figures</extracomment>
<translation>üblich {owner}</translation>
</message>
<message>
<source>half as much</source>
<extracomment>figures</extracomment>
<translation>halb so viel</translation>
</message>
<message>
<source>twice as much</source>
<extracomment>figures</extracomment>
<translation>doppelt so viel</translation>
</message>
<message>
<source>{usual} ({what})</source>
<extracomment>figures</extracomment>
<translation>{usual} ({what})</translation>
</message>
<message>
<source>Output of {part} at 50 K</source>
<extracomment>figures</extracomment>
<translation>Leistung von {part} bei 50 K</translation>
</message>
<message>
<source>Exponent</source>
<extracomment>figures</extracomment>
<translation>Exponent</translation>
</message>
<message>
<source>EN 442-2: usual for radiators</source>
<extracomment>figures</extracomment>
<translation>EN 442-2: üblich für Heizkörper</translation>
</message>
<message>
<source>the room that EN 442 tells outputs for</source>
<extracomment>figures</extracomment>
<translation>die Raumtemperatur, für die EN 442 Leistungen angibt</translation>
</message>
<message>
<source>the room thermostat beside {name}</source>
<extracomment>figures</extracomment>
<translation>der Raumthermostat bei {name}</translation>
</message>
<message>
<source>Room</source>
<extracomment>figures</extracomment>
<translation>Raum</translation>
</message>
<message>
<source>usual value</source>
<extracomment>figures</extracomment>
<translation>üblicher Wert</translation>
</message>
<message>
<source>the pipes are a loop that does not come back to where it began</source>
<extracomment>figures</extracomment>
<translation>die Rohre bilden einen Ring, der nicht dort ankommt, wo er begonnen hat</translation>
</message>
<message>
<source>the pipes lead between two parts whose heights say otherwise</source>
<extracomment>figures</extracomment>
<translation>die Rohre führen zwischen zwei Bauteilen hindurch, deren Höhen etwas anderes sagen</translation>
</message>
<message>
<source>the pipe rises or falls by more than its length</source>
<extracomment>figures</extracomment>
<translation>das Rohr steigt oder fällt um mehr als seine Länge</translation>
</message>
<message>
<source>Content of {pipe}, {value:.4g} m</source>
<extracomment>figures</extracomment>
<translation>Inhalt von {pipe}, {value:.4g} m</translation>
</message>
<message>
<source>Cold water, as the circuit is filled with</source>
<extracomment>figures</extracomment>
<translation>Kaltes Wasser, wie der Kreis gefüllt wird</translation>
</message>
<message>
<source>EN 806-3:2006, Table 2 (draw-off flows)</source>
<extracomment>figures</extracomment>
<translation>EN 806-3:2006, Tabelle 2 (Entnahmearmaturendurchflüsse)</translation>
</message>
<message>
<source>{name}, a {fitting}</source>
<extracomment>figures</extracomment>
<translation>{name} ({fitting})</translation>
</message>
<message>
<source>Loading units of {name}</source>
<extracomment>figures</extracomment>
<translation>Belastungswerte von {name}</translation>
</message>
<message>
<source>is set to give</source>
<extracomment>figures</extracomment>
<translation>ist eingestellt auf</translation>
</message>
<message>
<source>design flow (</source>
<extracomment>figures</extracomment>
<translation>Auslegungsvolumenstrom (</translation>
</message>
<message>
<source>pressure across it at its output's flow</source>
<extracomment>figures</extracomment>
<translation>Druckverlust beim Volumenstrom seiner Leistung</translation>
</message>
<message>
<source>kv once open</source>
<extracomment>figures</extracomment>
<translation>Kv-Wert in geöffnetem Zustand</translation>
</message>
<message>
<source>motor valve</source>
<extracomment>figures</extracomment>
<translation>Motorventil</translation>
</message>
<message>
<source>filter or strainer</source>
<extracomment>figures</extracomment>
<translation>Filter oder Schmutzfänger</translation>
</message>
<message>
<source>blending valve</source>
<extracomment>figures</extracomment>
<translation>Mischventil</translation>
</message>
<message>
<source>coil or exchanger</source>
<extracomment>figures</extracomment>
<translation>Heizschlange oder Wärmeübertrager</translation>
</message>
<message>
<source>radiator with its valves open</source>
<extracomment>figures</extracomment>
<translation>Heizkörper mit geöffneten Ventilen</translation>
</message>
<message>
<source>radiator without valves</source>
<extracomment>figures</extracomment>
<translation>Heizkörper ohne Ventile</translation>
</message>
<message>
<source>the program's formulas hold for water without glycol</source>
<extracomment>figures</extracomment>
<translation>die Formeln des Programms gelten für Wasser ohne Glykol</translation>
</message>
<message>
<source>the design's flow must be hotter than its return, and both liquid water</source>
<extracomment>figures</extracomment>
<translation>der Auslegungsvorlauf muss heißer sein als der Rücklauf, und beide müssen flüssiges Wasser sein</translation>
</message>
<message>
<source>{part} has a head or a most flow of 0</source>
<extracomment>figures</extracomment>
<translation>{part} hat eine Förderhöhe oder einen größten Volumenstrom von 0</translation>
</message>
<message>
<source>25 % of its length</source>
<extracomment>figures</extracomment>
<translation>25 % seiner Länge</translation>
</message>
<message>
<source>Building Services Engineering, example 4.2</source>
<extracomment>figures</extracomment>
<translation>Building Services Engineering, Beispiel 4.2</translation>
</message>
<message>
<source>tee, straight on</source>
<extracomment>figures</extracomment>
<translation>T-Stück, geradeaus</translation>
</message>
<message>
<source>tee, through the branch</source>
<extracomment>figures</extracomment>
<translation>T-Stück, durch den Abzweig</translation>
</message>
<message>
<source>isolating valve</source>
<extracomment>figures</extracomment>
<translation>Absperrventil</translation>
</message>
<message>
<source>Water in the heat source</source>
<extracomment>figures</extracomment>
<translation>Wasser im Wärmeerzeuger</translation>
</message>
<message>
<source>Safety valve set at, the lowest</source>
<extracomment>figures</extracomment>
<translation>Niedrigster Ansprechdruck der Sicherheitsventile</translation>
</message>
<message>
<source>it gives no heat</source>
<extracomment>figures</extracomment>
<translation>es gibt keine Wärme ab</translation>
</message>
<message>
<source>there is no water in the circuit</source>
<extracomment>figures</extracomment>
<translation>im Kreis ist kein Wasser</translation>
</message>
<message>
<source>the water does not become hotter than it is filled</source>
<extracomment>figures</extracomment>
<translation>das Wasser wird nicht heißer, als es eingefüllt wird</translation>
</message>
<message>
<source>Main's standing pressure, not reduced</source>
<extracomment>figures</extracomment>
<translation>Ruhedruck des Hausanschlusses, nicht gemindert</translation>
</message>
<message>
<source>Reducing valve set at</source>
<extracomment>figures</extracomment>
<translation>Druckminderer eingestellt auf</translation>
</message>
<message>
<source>Expansion relief valve set at</source>
<extracomment>figures</extracomment>
<translation>Ausdehnungs-Sicherheitsventil eingestellt auf</translation>
</message>
<message>
<source>Store's volume</source>
<extracomment>figures</extracomment>
<translation>Volumen des Speichers</translation>
</message>
<message>
<source>Secondary circuit that counts, above</source>
<extracomment>figures</extracomment>
<translation>Zirkulation, die zählt, ab</translation>
</message>
<message>
<source>Secondary circuit's pipes</source>
<extracomment>figures</extracomment>
<translation>Rohre der Zirkulation</translation>
</message>
<message>
<source>figure: bores and lengths of its pipes</source>
<extracomment>figures</extracomment>
<translation>Berechnung: Durchmesser und Längen der Rohre</translation>
</message>
<message>
<source>Numbers are missing.</source>
<extracomment>figures</extracomment>
<translation>Es fehlen Angaben.</translation>
</message>
<message>
<source>Balancing of emitters and coils</source>
<extracomment>figures/worked</extracomment>
<translation>Abgleich von Heizflächen und Heizschlangen</translation>
</message>
<message>
<source>left over = pump's head at design flow − losses of its circuit at design flow
kv = Q [m³/h] / √(Δp [bar])</source>
<extracomment>figures/worked</extracomment>
<translation>übrig = Förderhöhe der Pumpe beim Auslegungsvolumenstrom − Verluste des Kreises beim Auslegungsvolumenstrom
Kv = Q [m³/h] / √(Δp [bar])</translation>
</message>
<message>
<source>The pump as drawn, not turned down; a pump that is too weak leaves the valve that decides open. kv of a radiator: of its two valves and itself together. Across heads from 10 to 20 kPa on they may be heard: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Pumpe wie gezeichnet, nicht zurückgestellt; eine zu schwache Pumpe lässt das maßgebende Ventil offen. Kv-Wert eines Heizkörpers: beide Ventile und er selbst zusammen. An Thermostatköpfen kann man ab 10 bis 20 kPa etwas hören: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>what the pumps leave over can't be told for any of them</source>
<extracomment>figures/worked</extracomment>
<translation>was die Pumpen übrig lassen, lässt sich für keinen davon angeben</translation>
</message>
<message>
<source>limit</source>
<extracomment>figures/worked</extracomment>
<translation>Grenzwert</translation>
</message>
<message>
<source>Quiet across a thermostatic head up to</source>
<extracomment>figures/worked</extracomment>
<translation>An einem Thermostatkopf leise bis</translation>
</message>
<message>
<source>{name}: design flow, {run}</source>
<extracomment>figures/worked</extracomment>
<translation>{name}: Auslegungsvolumenstrom, {run}</translation>
</message>
<message>
<source>{name}: its valve has to take up</source>
<extracomment>figures/worked</extracomment>
<translation>{name}: Das Ventil muss aufnehmen</translation>
</message>
<message>
<source>{name}: kv, valves and all</source>
<extracomment>figures/worked</extracomment>
<translation>{name}: Kv-Wert samt Ventilen</translation>
</message>
<message>
<source>{name}: kv of a valve in series with it</source>
<extracomment>figures/worked</extracomment>
<translation>{name}: Kv-Wert eines Ventils in Reihe</translation>
</message>
<message>
<source>as open as it goes</source>
<extracomment>figures/worked</extracomment>
<translation>so weit offen, wie es geht</translation>
</message>
<message>
<source>{name}: across its head, all heads shut</source>
<extracomment>figures/worked</extracomment>
<translation>{name}: am Thermostatkopf, wenn alle zu sind</translation>
</message>
<message>
<source>{name}: above {quiet_kpa:g} kPa</source>
<extracomment>figures/worked</extracomment>
<translation>{name}: über {quiet_kpa:g} kPa</translation>
</message>
<message>
<source>a shut head may be heard</source>
<extracomment>figures/worked</extracomment>
<translation>ein geschlossener Kopf kann zu hören sein</translation>
</message>
<message>
<source>Setting of the bypass</source>
<extracomment>figures/worked</extracomment>
<translation>Einstellung des Überströmventils</translation>
</message>
<message>
<source>no lower than Δp across it, shut, while heat or hot water is called
no higher than Δp across it at run-on with Qmin through the heat source, less Δp of the open valve, (Q/kv)² × 100 kPa</source>
<extracomment>figures/worked</extracomment>
<translation>nicht niedriger als Δp am geschlossenen Ventil, während Heizung oder Warmwasser gefordert ist
nicht höher als Δp am Ventil beim Nachlauf mit Qmin durch den Wärmeerzeuger, abzüglich Δp des offenen Ventils, (Q/Kv)² × 100 kPa</translation>
</message>
<message>
<source>The spring is taken to hold its set difference at any flow; a real one rises some kPa as it opens. Heads that have shut leave more across the bypass than is told here: it should open then.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Feder soll ihre Druckdifferenz bei jedem Volumenstrom halten; eine wirkliche steigt beim Öffnen um einige kPa. Haben Thermostatköpfe geschlossen, liegt mehr an, als hier angegeben: Dann soll das Ventil öffnen.</translation>
</message>
<message>
<source>Least flow of {part}</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestvolumenstrom von {part}</translation>
</message>
<message>
<source>set {part}</source>
<extracomment>figures/worked</extracomment>
<translation>eingestellt {part}</translation>
</message>
<message>
<source>Set difference as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>Eingestellte Druckdifferenz wie gezeichnet</translation>
</message>
<message>
<source>it is on no loop that a pump drives water round</source>
<extracomment>figures/worked</extracomment>
<translation>es liegt in keinem Umlauf, durch den eine Pumpe Wasser fördert</translation>
</message>
<message>
<source>Across it, shut, in {called}: at least</source>
<extracomment>figures/worked</extracomment>
<translation>Am geschlossenen Ventil, {called}: mindestens</translation>
</message>
<message>
<source>At run-on</source>
<extracomment>figures/worked</extracomment>
<translation>Beim Nachlauf</translation>
</message>
<message>
<source>no pump runs on, or no heat source needs it: any setting above serves</source>
<extracomment>figures/worked</extracomment>
<translation>keine Pumpe läuft nach, oder kein Wärmeerzeuger braucht es: Jede Einstellung darüber genügt</translation>
</message>
<message>
<source>even with no spring at all it lets too little through</source>
<extracomment>figures/worked</extracomment>
<translation>selbst ganz ohne Feder lässt es zu wenig durch</translation>
</message>
<message>
<source>For the least flow in {run_on}: at most</source>
<extracomment>figures/worked</extracomment>
<translation>Für den Mindestvolumenstrom, {run_on}: höchstens</translation>
</message>
<message>
<source>the heat source has its least flow without it</source>
<extracomment>figures/worked</extracomment>
<translation>der Wärmeerzeuger hat seinen Mindestvolumenstrom auch ohne</translation>
</message>
<message>
<source>Set difference that serves both</source>
<extracomment>figures/worked</extracomment>
<translation>Druckdifferenz, die beidem genügt</translation>
</message>
<message>
<source>none does</source>
<extracomment>figures/worked</extracomment>
<translation>keine genügt</translation>
</message>
<message>
<source>{called_kpa:.3g} to {run_on_kpa:.3g}</source>
<extracomment>figures/worked</extracomment>
<translation>{called_kpa:.3g} bis {run_on_kpa:.3g}</translation>
</message>
<message>
<source>In the middle</source>
<extracomment>figures/worked</extracomment>
<translation>In der Mitte</translation>
</message>
<message>
<source>at most</source>
<extracomment>figures/worked</extracomment>
<translation>höchstens</translation>
</message>
<message>
<source>What the feed cistern must take up</source>
<extracomment>figures/worked</extracomment>
<translation>Was der Vorlagebehälter aufnehmen muss</translation>
</message>
<message>
<source>Ve = 0.04 V (others: 0.05 V)
by the densities: Ve = V (ρ(t1) / ρ(t2) − 1)</source>
<extracomment>figures/worked</extracomment>
<translation>Ve = 0,04 V (andere: 0,05 V)
nach den Dichten: Ve = V (ρ(t1) / ρ(t2) − 1)</translation>
</message>
<message>
<source>4 %: BS 5449 and WFR guidance to Schedule 2, as taught in trade textbooks. 5 %: from memory; sources disagree. 18 l as the smallest: BS 5449, as taught in the trade.</source>
<extracomment>figures/worked</extracomment>
<translation>4 %: BS 5449 und WFR-Richtlinie zu Schedule 2, wie in Fachbüchern gelehrt. 5 %: aus dem Gedächtnis; die Quellen sind uneins. 18 l als das Kleinste: BS 5449, wie im Handwerk gelehrt.</translation>
</message>
<message>
<source>Room above the cold water level and below the warning pipe, which the cistern's content does not tell. Water without glycol: with it, it swells by about a fifth more.</source>
<extracomment>figures/worked</extracomment>
<translation>Raum über dem kalten Wasserspiegel und unter dem Überlauf, den der Behälterinhalt nicht verrät. Wasser ohne Glykol: Mit Glykol dehnt es sich etwa ein Fünftel stärker aus.</translation>
</message>
<message>
<source>Water of the circuit</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser des Kreises</translation>
</message>
<message>
<source>Room for 4 %</source>
<extracomment>figures/worked</extracomment>
<translation>Raum für 4 %</translation>
</message>
<message>
<source>Room for 5 %, by other sources</source>
<extracomment>figures/worked</extracomment>
<translation>Raum für 5 %, nach anderen Quellen</translation>
</message>
<message>
<source>By the densities of water</source>
<extracomment>figures/worked</extracomment>
<translation>Nach den Dichten von Wasser</translation>
</message>
<message>
<source>Smallest cistern</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinster Behälter</translation>
</message>
<message>
<source>Content stated</source>
<extracomment>figures/worked</extracomment>
<translation>Angegebener Inhalt</translation>
</message>
<message>
<source>Discharge pipe of a mains-fed store</source>
<extracomment>figures/worked</extracomment>
<translation>Abblaseleitung eines geschlossenen Speichers</translation>
</message>
<message>
<source>R = L + n × allowance of the size, at most the size's limit
longest straight length with the bends drawn = limit − n × allowance
fall = 1 in 200 of the length after the straight drop</source>
<extracomment>figures/worked</extracomment>
<translation>R = L + n × Zuschlag der Größe, höchstens der Grenzwert der Größe
längste gerade Länge mit den gezeichneten Bögen = Grenzwert − n × Zuschlag
Gefälle = 1 zu 200 der Länge nach dem geraden Fallstück</translation>
</message>
<message>
<source>Approved Document G (England), Table 3.1 and 3.50 to 3.58, 2010 edition and the 2015 edition with 2016 amendments; beyond the printed rows one size more for each further 9 m (3.58), worked anew with each size's own allowance for a bend. D1 within 600 mm: 3.54; older editions and leaflets print 500 mm. A tee entered or left by its branch counts as one bend: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>Approved Document G (England), Tabelle 3.1 und 3.50 bis 3.58, Ausgabe 2010 und Ausgabe 2015 mit den Änderungen von 2016; über die gedruckten Zeilen hinaus eine Größe mehr je weitere 9 m (3.58), neu gerechnet mit dem Bogenzuschlag jeder Größe. D1 innerhalb von 600 mm: 3.54; ältere Ausgaben und Merkblätter nennen 500 mm. Ein durch den Abzweig durchströmtes T-Stück zählt als ein Bogen: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Copper; valve outlets G 1/2, G 3/4 and G 1; the limit itself passes.</source>
<extracomment>figures/worked</extracomment>
<translation>Kupfer; Ventilaustritte G 1/2, G 3/4 und G 1; der Grenzwert selbst ist zulässig.</translation>
</message>
<message>
<source>Discharge pipe that several stores share</source>
<extracomment>figures/worked</extracomment>
<translation>Gemeinsame Abblaseleitung mehrerer Speicher</translation>
</message>
<message>
<source>common size = so many sizes above the largest D2 that one of the stores needs alone</source>
<extracomment>figures/worked</extracomment>
<translation>gemeinsame Größe = so viele Größen über dem größten D2, das einer der Speicher allein braucht</translation>
</message>
<message>
<source>Approved Document G (England) 3.59, with Table 3.1 and 3.58 for each store's own size.</source>
<extracomment>figures/worked</extracomment>
<translation>Approved Document G (England) 3.59, mit Tabelle 3.1 und 3.58 für die eigene Größe jedes Speichers.</translation>
</message>
<message>
<source>the discharge comes to no end in the drawing</source>
<extracomment>figures/worked</extracomment>
<translation>die Abblaseleitung kommt in der Zeichnung zu keinem Ende</translation>
</message>
<message>
<source>no tundish stands on the way, so the pipe before it and after it cannot be told apart</source>
<extracomment>figures/worked</extracomment>
<translation>auf dem Weg steht kein Ablauftrichter, sodass das Rohr davor und das danach nicht zu unterscheiden sind</translation>
</message>
<message>
<source>Valve's outlet, by the tube that fits it</source>
<extracomment>figures/worked</extracomment>
<translation>Austritt des Ventils, nach dem passenden Rohr</translation>
</message>
<message>
<source>material {pipe}</source>
<extracomment>figures/worked</extracomment>
<translation>Werkstoff {pipe}</translation>
</message>
<message>
<source>Material after the tundish</source>
<extracomment>figures/worked</extracomment>
<translation>Werkstoff nach dem Ablauftrichter</translation>
</message>
<message>
<source>{larger:g} mm instead of {own:g} mm</source>
<extracomment>figures/worked</extracomment>
<translation>{larger:g} mm statt {own:g} mm</translation>
</message>
<message>
<source>plastic instead of copper</source>
<extracomment>figures/worked</extracomment>
<translation>Kunststoff statt Kupfer</translation>
</message>
<message>
<source>the table has no valve outlet of that size</source>
<extracomment>figures/worked</extracomment>
<translation>die Tabelle kennt keinen Ventilaustritt dieser Größe</translation>
</message>
<message>
<source>{pipe} is {materials}</source>
<extracomment>figures/worked</extracomment>
<translation>{pipe} ist aus {materials}</translation>
</message>
<message>
<source>the table holds for copper, and {names}</source>
<extracomment>figures/worked</extracomment>
<translation>die Tabelle gilt für Kupfer, und {names}</translation>
</message>
<message>
<source>Length after the tundish</source>
<extracomment>figures/worked</extracomment>
<translation>Länge nach dem Ablauftrichter</translation>
</message>
<message>
<source>Bends after the tundish</source>
<extracomment>figures/worked</extracomment>
<translation>Bögen nach dem Ablauftrichter</translation>
</message>
<message>
<source>n tees</source>
<extracomment>figures/worked</extracomment>
<translation>n T-Stücke</translation>
</message>
<message>
<source>Tees entered or left by their branch</source>
<extracomment>figures/worked</extracomment>
<translation>T-Stücke, durch den Abzweig durchströmt</translation>
</message>
<message>
<source>counted in the drawing</source>
<extracomment>figures/worked</extracomment>
<translation>in der Zeichnung gezählt</translation>
</message>
<message>
<source>Smallest size after the tundish (D2)</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinste Größe nach dem Ablauftrichter (D2)</translation>
</message>
<message>
<source>none: shorten it</source>
<extracomment>figures/worked</extracomment>
<translation>keine: Leitung kürzen</translation>
</message>
<message>
<source>Allowed in {d2_mm:g} mm</source>
<extracomment>figures/worked</extracomment>
<translation>Erlaubt in {d2_mm:g} mm</translation>
</message>
<message>
<source>That size is</source>
<extracomment>figures/worked</extracomment>
<translation>Diese Größe ist</translation>
</message>
<message>
<source>beyond the printed table, by its rule</source>
<extracomment>figures/worked</extracomment>
<translation>jenseits der gedruckten Tabelle, nach ihrer Regel</translation>
</message>
<message>
<source>{d2_mm:g} mm</source>
<extracomment>figures/worked</extracomment>
<translation>{d2_mm:g} mm</translation>
</message>
<message>
<source>In {size} it counts as</source>
<extracomment>figures/worked</extracomment>
<translation>In {size} zählt sie als</translation>
</message>
<message>
<source>Limit of {size}</source>
<extracomment>figures/worked</extracomment>
<translation>Grenzwert von {size}</translation>
</message>
<message>
<source>Longest straight length in {size} with these bends</source>
<extracomment>figures/worked</extracomment>
<translation>Längste gerade Länge in {size} mit diesen Bögen</translation>
</message>
<message>
<source>It may still grow in {size} by</source>
<extracomment>figures/worked</extracomment>
<translation>In {size} darf sie noch wachsen um</translation>
</message>
<message>
<source>Too long for {size} by</source>
<extracomment>figures/worked</extracomment>
<translation>Zu lang für {size} um</translation>
</message>
<message>
<source>Size as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>Größe wie gezeichnet</translation>
</message>
<message>
<source>Size as drawn, the smallest on the way</source>
<extracomment>figures/worked</extracomment>
<translation>Größe wie gezeichnet, die kleinste auf dem Weg</translation>
</message>
<message>
<source>smaller than any for this valve</source>
<extracomment>figures/worked</extracomment>
<translation>kleiner als jede für dieses Ventil</translation>
</message>
<message>
<source>not in the table</source>
<extracomment>figures/worked</extracomment>
<translation>nicht in der Tabelle</translation>
</message>
<message>
<source>The size as drawn is</source>
<extracomment>figures/worked</extracomment>
<translation>Die gezeichnete Größe ist</translation>
</message>
<message>
<source>Smallest size before the tundish (D1)</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinste Größe vor dem Ablauftrichter (D1)</translation>
</message>
<message>
<source>D1 most</source>
<extracomment>figures/worked</extracomment>
<translation>D1 höchstens</translation>
</message>
<message>
<source>Longest pipe before the tundish</source>
<extracomment>figures/worked</extracomment>
<translation>Längstes Rohr vor dem Ablauftrichter</translation>
</message>
<message>
<source>Length before the tundish</source>
<extracomment>figures/worked</extracomment>
<translation>Länge vor dem Ablauftrichter</translation>
</message>
<message>
<source>not known; at most {most:g} m</source>
<extracomment>figures/worked</extracomment>
<translation>nicht bekannt; höchstens {most:g} m</translation>
</message>
<message>
<source>Length before the tundish, at most {most:g} m</source>
<extracomment>figures/worked</extracomment>
<translation>Länge vor dem Ablauftrichter, höchstens {most:g} m</translation>
</message>
<message>
<source>fall</source>
<extracomment>figures/worked</extracomment>
<translation>Gefälle</translation>
</message>
<message>
<source>Least fall</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestgefälle</translation>
</message>
<message>
<source>drop</source>
<extracomment>figures/worked</extracomment>
<translation>Fallstück</translation>
</message>
<message>
<source>Straight down below the tundish</source>
<extracomment>figures/worked</extracomment>
<translation>Gerade hinab unter dem Ablauftrichter</translation>
</message>
<message>
<source>Straight drop below the tundish, at least</source>
<extracomment>figures/worked</extracomment>
<translation>Gerades Fallstück unter dem Ablauftrichter, mindestens</translation>
</message>
<message>
<source>Fall over the rest, at least</source>
<extracomment>figures/worked</extracomment>
<translation>Gefälle auf dem Rest, mindestens</translation>
</message>
<message>
<source>Sizes above the largest single one</source>
<extracomment>figures/worked</extracomment>
<translation>Größen über der größten einzelnen</translation>
</message>
<message>
<source>Size that {part} needs alone</source>
<extracomment>figures/worked</extracomment>
<translation>Größe, die {part} allein braucht</translation>
</message>
<message>
<source>the size that one of the stores needs alone cannot be told</source>
<extracomment>figures/worked</extracomment>
<translation>die Größe, die einer der Speicher allein braucht, lässt sich nicht angeben</translation>
</message>
<message>
<source>Smallest size of the common pipe</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinste Größe der gemeinsamen Leitung</translation>
</message>
<message>
<source>none is large enough: lead each to its own end</source>
<extracomment>figures/worked</extracomment>
<translation>keine reicht aus: jede zu einem eigenen Ende führen</translation>
</message>
<message>
<source>As drawn, the smallest of it</source>
<extracomment>figures/worked</extracomment>
<translation>Wie gezeichnet, das Kleinste davon</translation>
</message>
<message>
<source>How long the store lasts</source>
<extracomment>figures/worked</extracomment>
<translation>Wie lange der Speicher reicht</translation>
</message>
<message>
<source>V40 = V (Ts − Tc) / (40 − Tc)
t = V40 / q, q = 0.1 l/s for each loading unit
q without end = P / (ρ c (40 − Tc))</source>
<extracomment>figures/worked</extracomment>
<translation>V40 = V (Ts − Tc) / (40 − Tc)
t = V40 / q, q = 0,1 l/s je Belastungswert
q auf Dauer = P / (ρ c (40 − Tc))</translation>
</message>
<message>
<source>; a heat balance.</source>
<extracomment>figures/worked</extracomment>
<translation>; eine Wärmebilanz.</translation>
</message>
<message>
<source>One outlet at a time, wide open; a flow that is throttled, or a water-saving head, lasts longer. The ideal mix of a store that keeps its layers: a real one gives less.</source>
<extracomment>figures/worked</extracomment>
<translation>Immer nur eine Zapfstelle, ganz geöffnet; gedrosselt oder mit Sparbrause reicht es länger. Die ideale Mischung eines Speichers, der seine Schichtung behält: Ein wirklicher gibt weniger.</translation>
</message>
<message>
<source>Water of {hot:g} °C and of {cold:g} °C give no mix of {mixed_c:g} °C.</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser von {hot:g} °C und von {cold:g} °C ergeben keine Mischung von {mixed_c:g} °C.</translation>
</message>
<message>
<source>Mixed water at 40 °C</source>
<extracomment>figures/worked</extracomment>
<translation>Mischwasser von 40 °C</translation>
</message>
<message>
<source>At {name}, {flow:.3g} l/min</source>
<extracomment>figures/worked</extracomment>
<translation>An {name}, {flow:.3g} l/min</translation>
</message>
<message>
<source>Not told for want of {missing}.</source>
<extracomment>figures/worked</extracomment>
<translation>Nicht angegeben, weil fehlt: {missing}.</translation>
</message>
<message>
<source>, at the most</source>
<extracomment>figures/worked</extracomment>
<translation>, höchstens</translation>
</message>
<message>
<source>Sustained without end at 40 °C{most}</source>
<extracomment>figures/worked</extracomment>
<translation>Auf Dauer bei 40 °C{most}</translation>
</message>
<message>
<source>Output of the emitter at the design's temperatures</source>
<extracomment>figures/worked</extracomment>
<translation>Leistung der Heizfläche bei den Auslegungstemperaturen</translation>
</message>
<message>
<source>ΔT = (Tf + Tr) / 2 − Ti
Φ = Φn × (ΔT / 50 K)^n</source>
<extracomment>figures/worked</extracomment>
<translation>ΔT = (Tf + Tr) / 2 − Ti
Φ = Φn × (ΔT / 50 K)^n</translation>
</message>
<message>
<source>EN 442-1 (nominal at 75/65/20 °C: 50 K) and EN 442-2 (characteristic equation). Exponent 1.3: usual for radiators; the maker's own goes before.</source>
<extracomment>figures/worked</extracomment>
<translation>EN 442-1 (Normleistung bei 75/65/20 °C: 50 K) und EN 442-2 (Kennliniengleichung). Exponent 1,3: üblich für Heizkörper; der Wert des Herstellers geht vor.</translation>
</message>
<message>
<source>The stated output is the nominal one, at 50 K. Radiators and convectors; for floors and fan units other laws hold. A casing, a shelf or paint with metal in it takes some away.</source>
<extracomment>figures/worked</extracomment>
<translation>Die angegebene Leistung ist die Normleistung bei 50 K. Heizkörper und Konvektoren; für Fußböden und Gebläsegeräte gelten andere Gesetze. Eine Verkleidung, ein Brett darüber oder metallhaltige Farbe mindert sie etwas.</translation>
</message>
<message>
<source>Its water is limited to {limited_c:g} °C, cooler than the design's flow: what it gives there is its stated output, and no law for radiators tells it.</source>
<extracomment>figures/worked</extracomment>
<translation>Das Wasser ist auf {limited_c:g} °C begrenzt, kühler als der Auslegungsvorlauf: Was dann abgegeben wird, ist die angegebene Leistung, und kein Gesetz für Heizkörper sagt es.</translation>
</message>
<message>
<source>Water of {flow:g} °C on the mean does not warm a room of {room_c:g} °C.</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser von im Mittel {flow:g} °C erwärmt keinen Raum von {room_c:g} °C.</translation>
</message>
<message>
<source>Mean water above the room</source>
<extracomment>figures/worked</extracomment>
<translation>Mittleres Wasser über dem Raum</translation>
</message>
<message>
<source>Share of the nominal output</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil an der Normleistung</translation>
</message>
<message>
<source>By the logarithmic mean, since the water cools far</source>
<extracomment>figures/worked</extracomment>
<translation>Nach dem logarithmischen Mittel, da das Wasser stark abkühlt</translation>
</message>
<message>
<source>room temperature</source>
<extracomment>figures/worked</extracomment>
<translation>Raumtemperatur</translation>
</message>
<message>
<source>+{room_by_k:g} °C on {room_c:g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>+{room_by_k:g} °C auf {room_c:g} °C</translation>
</message>
<message>
<source>{other_exponent:g} instead of {exponent:g}</source>
<extracomment>figures/worked</extracomment>
<translation>{other_exponent:g} statt {exponent:g}</translation>
</message>
<message>
<source>Load of the filled store on the floor</source>
<extracomment>figures/worked</extracomment>
<translation>Last des gefüllten Speichers auf dem Boden</translation>
</message>
<message>
<source>m = m0 + 1 kg/l × (V + Vc)
A = π d² / 4
q = m g / A</source>
<extracomment>figures/worked</extracomment>
<translation>m = m0 + 1 kg/l × (V + Vc)
A = π d² / 4
q = m g / A</translation>
</message>
<message>
<source>Weight of water: City &amp; Guilds Textbook: Plumbing, Book 1, 2019. What floors of dwellings are reckoned for, 1.5 kN/m²: national annex to BS EN 1991-1-1, category A1 (from memory).</source>
<extracomment>figures/worked</extracomment>
<translation>Gewicht des Wassers: City &amp; Guilds Textbook: Plumbing, Buch 1, 2019. Wofür Wohnungsböden bemessen werden, 1,5 kN/m²: nationaler Anhang zu BS EN 1991-1-1, Kategorie A1 (aus dem Gedächtnis).</translation>
</message>
<message>
<source>Always advice: a competent person must confirm the structure. The store stands on a round footprint as wide as itself; a base that spreads the load lowers it, feet raise it.</source>
<extracomment>figures/worked</extracomment>
<translation>Immer nur Empfehlung: Ein Fachkundiger muss das Tragwerk bestätigen. Der Speicher steht auf einem Kreis von seiner Breite; eine lastverteilende Platte senkt die Last, Füße erhöhen sie.</translation>
</message>
<message>
<source>Filled weight</source>
<extracomment>figures/worked</extracomment>
<translation>Gewicht gefüllt</translation>
</message>
<message>
<source>Load</source>
<extracomment>figures/worked</extracomment>
<translation>Last</translation>
</message>
<message>
<source>The load on each square metre is not told for want of {store}.diameter_mm.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Last je Quadratmeter ist nicht angegeben, weil {store}.diameter_mm fehlt.</translation>
</message>
<message>
<source>Footprint</source>
<extracomment>figures/worked</extracomment>
<translation>Standfläche</translation>
</message>
<message>
<source>Load on the footprint</source>
<extracomment>figures/worked</extracomment>
<translation>Last auf der Standfläche</translation>
</message>
<message>
<source>Height of its water, at the least</source>
<extracomment>figures/worked</extracomment>
<translation>Höhe seines Wassers, mindestens</translation>
</message>
<message>
<source>What the floor is stated to carry</source>
<extracomment>figures/worked</extracomment>
<translation>Angegebene Tragfähigkeit des Bodens</translation>
</message>
<message>
<source>Share of what the floor is stated to carry</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil an der angegebenen Tragfähigkeit</translation>
</message>
<message>
<source>Flows of the pumped water</source>
<extracomment>figures/worked</extracomment>
<translation>Volumenströme im Pumpenumlauf</translation>
</message>
<message>
<source>Σ Q = 0 at each joint, Σ Δp = 0 round each loop
pipe: Δp = (f L/d + Σ ζ) ρ v²/2
f: 64/Re up to 2,000; 1/√f = −2 log10(k/(3.7 d) + 2.51/(Re √f)) from 4,000; a straight line between
valve: Δp = 1 bar × (Q/kv)²
pump: Δp = ρ g H0 (1 − (Q/Q0)²)</source>
<extracomment>figures/worked</extracomment>
<translation>Σ Q = 0 an jedem Knoten, Σ Δp = 0 in jedem Umlauf
Rohr: Δp = (f L/d + Σ ζ) ρ v²/2
f: 64/Re bis 2000; 1/√f = −2 log10(k/(3,7 d) + 2,51/(Re √f)) ab 4000; dazwischen eine Gerade
Ventil: Δp = 1 bar × (Q/Kv)²
Pumpe: Δp = ρ g H0 (1 − (Q/Q0)²)</translation>
</message>
<message>
<source>Between Re 2,000 and 4,000 no law of friction holds. A pump's curve is taken for the parabola through its shut-off head and its most flow; one that regulates itself runs lower.</source>
<extracomment>figures/worked</extracomment>
<translation>Zwischen Re 2000 und 4000 gilt kein Reibungsgesetz. Die Pumpenkennlinie wird als Parabel durch Nullförderhöhe und größten Volumenstrom genommen; eine selbst regelnde läuft darunter.</translation>
</message>
<message>
<source>in no situation does a pump run</source>
<extracomment>figures/worked</extracomment>
<translation>in keinem Betriebszustand läuft eine Pumpe</translation>
</message>
<message>
<source>{situation}: {part}</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: {part}</translation>
</message>
<message>
<source>{situation}: fastest, in {fastest}</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: am schnellsten, in {fastest}</translation>
</message>
<message>
<source>{situation}: pipes by law of friction</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: Rohre nach Reibungsgesetz</translation>
</message>
<message>
<source>{count} {law}</source>
<extracomment>figures/worked</extracomment>
<translation>{count} {law}</translation>
</message>
<message>
<source>Heat source against emitters and coil</source>
<extracomment>figures/worked</extracomment>
<translation>Wärmeerzeuger gegenüber Heizflächen und Heizschlange</translation>
</message>
<message>
<source>Φ = sum of Φn × (ΔT / 50 K)^n over the emitters
to spare = ΣP − Φ − ΣPc</source>
<extracomment>figures/worked</extracomment>
<translation>Φ = Summe von Φn × (ΔT / 50 K)^n über die Heizflächen
Reserve = ΣP − Φ − ΣPc</translation>
</message>
<message>
<source>Conservation of energy; emitters by EN 442-2, exponent 1.3 (usual).</source>
<extracomment>figures/worked</extracomment>
<translation>Energieerhaltung; Heizflächen nach EN 442-2, Exponent 1,3 (üblich).</translation>
</message>
<message>
<source>Emitters all open and their rooms at the temperature told; pipe losses not counted. What the rooms lose, and so what they need, is not in the drawing. An emitter that takes cooler water by its own limit counts at its stated output.</source>
<extracomment>figures/worked</extracomment>
<translation>Alle Heizflächen offen und ihre Räume bei der angegebenen Temperatur; Rohrverluste nicht gezählt. Was die Räume verlieren und also brauchen, steht nicht in der Zeichnung. Eine Heizfläche, die durch ihre eigene Grenze kühleres Wasser bekommt, zählt mit ihrer angegebenen Leistung.</translation>
</message>
<message>
<source>Heat sources together</source>
<extracomment>figures/worked</extracomment>
<translation>Wärmeerzeuger zusammen</translation>
</message>
<message>
<source>Emitters at 50 K</source>
<extracomment>figures/worked</extracomment>
<translation>Heizflächen bei 50 K</translation>
</message>
<message>
<source>Emitters at the design's temperatures</source>
<extracomment>figures/worked</extracomment>
<translation>Heizflächen bei den Auslegungstemperaturen</translation>
</message>
<message>
<source>To spare, heating alone</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve, Heizung allein</translation>
</message>
<message>
<source>Coils together</source>
<extracomment>figures/worked</extracomment>
<translation>Heizschlangen zusammen</translation>
</message>
<message>
<source>To spare, hot water alone</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve, Warmwasser allein</translation>
</message>
<message>
<source>Coils' share of the heat sources</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil der Heizschlangen an den Wärmeerzeugern</translation>
</message>
<message>
<source>To spare, heating and hot water at once</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve, Heizung und Warmwasser zugleich</translation>
</message>
<message>
<source>Not counted, since its kind has no coil power: {names}.</source>
<extracomment>figures/worked</extracomment>
<translation>Nicht gezählt, da ihre Art keine Leistung der Heizschlange kennt: {names}.</translation>
</message>
<message>
<source>Expansion vessel of the heating water</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnungsgefäß des Heizwassers</translation>
</message>
<message>
<source>Ve = e × V
Vwr = max(0.005 × V, 3 l); a vessel up to 15 l: a fifth of itself
p0 = 0.0981 × h + pv + margin
pe = psv − 0.5 up to 5 bar, else 0.9 × psv; less height and pump head between valve and vessel
Vexp = (Ve + Vwr) × (pe + 1) / (pe − p0)
least fill = Vn × (p0 + 1) / (Vn − Vwr) − 1
highest fill = Vn × (p0 + 1) / (Vn × (p0 + 1) / (pe + 1) + Ve) − 1
cross-check: 0.0491 × V / (1 − (p0 + 1) / (psv − 0.35 + 1)), × 0.8 below 88 °C</source>
<extracomment>figures/worked</extracomment>
<translation>Ve = e × V
Vwr = max(0,005 × V, 3 l); bei einem Gefäß bis 15 l: ein Fünftel davon
p0 = 0,0981 × h + pv + Zuschlag
pe = psv − 0,5 bis 5 bar, sonst 0,9 × psv; abzüglich Höhe und Förderhöhe zwischen Ventil und Gefäß
Vexp = (Ve + Vwr) × (pe + 1) / (pe − p0)
kleinster Fülldruck = Vn × (p0 + 1) / (Vn − Vwr) − 1
größter Fülldruck = Vn × (p0 + 1) / (Vn × (p0 + 1) / (pe + 1) + Ve) − 1
Gegenprobe: 0,0491 × V / (1 − (p0 + 1) / (psv − 0,35 + 1)), × 0,8 unter 88 °C</translation>
</message>
<message>
<source>BS EN 12828:2012, Annex D (method and numbers from memory); Boyle's law for the highest fill; cross-check: the formula that gives the table of BS 5449 and BS 7074-1. The two disagree: final pressure 0.5 or 0.35 bar under the safety valve, swell by density or 4.91 %. Sizes made: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>BS EN 12828:2012, Anhang D (Verfahren und Zahlen aus dem Gedächtnis); Gesetz von Boyle für den größten Fülldruck; Gegenprobe: die Formel hinter der Tabelle von BS 5449 und BS 7074-1. Beide weichen ab: Enddruck 0,5 oder 0,35 bar unter dem Sicherheitsventil, Ausdehnung nach Dichte oder 4,91 %. Hergestellte Größen: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Gauge pressures in bar, 1 bar of atmosphere; water without glycol, 0 to 110 °C; pressures at the vessel. Several vessels: as one, with the highest least charge and the lowest final pressure of theirs.</source>
<extracomment>figures/worked</extracomment>
<translation>Überdrücke in bar, Luftdruck 1 bar; Wasser ohne Glykol, 0 bis 110 °C; Drücke am Gefäß. Mehrere Gefäße: wie eines, mit dem höchsten Mindestvordruck und dem niedrigsten Enddruck.</translation>
</message>
<message>
<source>no safety valve stands on this water, so nothing sets its highest pressure</source>
<extracomment>figures/worked</extracomment>
<translation>an diesem Wasser sitzt kein Sicherheitsventil, also begrenzt nichts seinen Höchstdruck</translation>
</message>
<message>
<source>Share by which the water swells</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil, um den sich das Wasser ausdehnt</translation>
</message>
<message>
<source>margin</source>
<extracomment>figures/worked</extracomment>
<translation>Zuschlag</translation>
</message>
<message>
<source>Margin over the static height</source>
<extracomment>figures/worked</extracomment>
<translation>Zuschlag zur statischen Höhe</translation>
</message>
<message>
<source>Vapour pressure over atmospheric</source>
<extracomment>figures/worked</extracomment>
<translation>Dampfdruck über Luftdruck</translation>
</message>
<message>
<source>steam tables (from memory)</source>
<extracomment>figures/worked</extracomment>
<translation>Dampftafeln (aus dem Gedächtnis)</translation>
</message>
<message>
<source>Least charge</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestvordruck</translation>
</message>
<message>
<source>worked: 0.0981 × h + pv + margin</source>
<extracomment>figures/worked</extracomment>
<translation>berechnet: 0,0981 × h + pv + Zuschlag</translation>
</message>
<message>
<source>given heights and rises of the parts</source>
<extracomment>figures/worked</extracomment>
<translation>angegebene Höhen und Anstiege der Bauteile</translation>
</message>
<message>
<source>Top of the water above the vessel</source>
<extracomment>figures/worked</extracomment>
<translation>Oberstes Wasser über dem Gefäß</translation>
</message>
<message>
<source>Safety valve set at</source>
<extracomment>figures/worked</extracomment>
<translation>Ansprechdruck des Sicherheitsventils</translation>
</message>
<message>
<source>worked from psv</source>
<extracomment>figures/worked</extracomment>
<translation>berechnet aus psv</translation>
</message>
<message>
<source>worked from psv, height and pump between valve and vessel</source>
<extracomment>figures/worked</extracomment>
<translation>berechnet aus psv, Höhe und Pumpe zwischen Ventil und Gefäß</translation>
</message>
<message>
<source>Highest pressure at the vessel</source>
<extracomment>figures/worked</extracomment>
<translation>Höchster Druck am Gefäß</translation>
</message>
<message>
<source>Swell</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnung</translation>
</message>
<message>
<source>Charge, at least</source>
<extracomment>figures/worked</extracomment>
<translation>Vordruck, mindestens</translation>
</message>
<message>
<source>Smallest vessel by BS EN 12828</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinstes Gefäß nach BS EN 12828</translation>
</message>
<message>
<source>none serves: the charge is no lower than pe</source>
<extracomment>figures/worked</extracomment>
<translation>keines genügt: Der Vordruck ist nicht niedriger als pe</translation>
</message>
<message>
<source>Its reserve when cold</source>
<extracomment>figures/worked</extracomment>
<translation>Seine Wasservorlage, kalt</translation>
</message>
<message>
<source>By the form of BS 5449 and BS 7074-1</source>
<extracomment>figures/worked</extracomment>
<translation>Nach der Form von BS 5449 und BS 7074-1</translation>
</message>
<message>
<source>none serves</source>
<extracomment>figures/worked</extracomment>
<translation>keines genügt</translation>
</message>
<message>
<source>Next size made for the larger of the two</source>
<extracomment>figures/worked</extracomment>
<translation>Nächste hergestellte Größe für das Größere von beiden</translation>
</message>
<message>
<source>none is made so large: fit several</source>
<extracomment>figures/worked</extracomment>
<translation>keines wird so groß hergestellt: mehrere einbauen</translation>
</message>
<message>
<source>That size filled cold, from</source>
<extracomment>figures/worked</extracomment>
<translation>Diese Größe kalt gefüllt, ab</translation>
</message>
<message>
<source>That size filled cold, to</source>
<extracomment>figures/worked</extracomment>
<translation>Diese Größe kalt gefüllt, bis</translation>
</message>
<message>
<source>Vessel as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>Gefäß wie gezeichnet</translation>
</message>
<message>
<source>Charge as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>Vordruck wie gezeichnet</translation>
</message>
<message>
<source>Vessel in {name}</source>
<extracomment>figures/worked</extracomment>
<translation>Gefäß in {name}</translation>
</message>
<message>
<source>{name} as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>{name} wie gezeichnet</translation>
</message>
<message>
<source>volume not known</source>
<extracomment>figures/worked</extracomment>
<translation>Volumen nicht bekannt</translation>
</message>
<message>
<source>Fill pressure as designed</source>
<extracomment>figures/worked</extracomment>
<translation>Fülldruck wie ausgelegt</translation>
</message>
<message>
<source>with the least charge</source>
<extracomment>figures/worked</extracomment>
<translation>mit dem Mindestvordruck</translation>
</message>
<message>
<source>charged as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>mit dem gezeichneten Vordruck</translation>
</message>
<message>
<source>none: too small, or charged too high</source>
<extracomment>figures/worked</extracomment>
<translation>keiner: zu klein oder Vordruck zu hoch</translation>
</message>
<message>
<source>{name} {how}, cold-fill range</source>
<extracomment>figures/worked</extracomment>
<translation>{name} {how}, Bereich des kalten Fülldrucks</translation>
</message>
<message>
<source>{name} {how}, filled cold from</source>
<extracomment>figures/worked</extracomment>
<translation>{name} {how}, kalt gefüllt ab</translation>
</message>
<message>
<source>{name} {how}, filled cold to</source>
<extracomment>figures/worked</extracomment>
<translation>{name} {how}, kalt gefüllt bis</translation>
</message>
<message>
<source>within that</source>
<extracomment>figures/worked</extracomment>
<translation>darin</translation>
</message>
<message>
<source>below that</source>
<extracomment>figures/worked</extracomment>
<translation>darunter</translation>
</message>
<message>
<source>above that</source>
<extracomment>figures/worked</extracomment>
<translation>darüber</translation>
</message>
<message>
<source>Fill pressure as designed ({where})</source>
<extracomment>figures/worked</extracomment>
<translation>Fülldruck wie ausgelegt ({where})</translation>
</message>
<message>
<source>0.2 bar instead of 0.3 (smallest vessel)</source>
<extracomment>figures/worked</extracomment>
<translation>0,2 bar statt 0,3 (kleinstes Gefäß)</translation>
</message>
<message>
<source>2.5 bar instead of 3 (smallest vessel)</source>
<extracomment>figures/worked</extracomment>
<translation>2,5 bar statt 3 (kleinstes Gefäß)</translation>
</message>
<message>
<source>Index circuit of the pump</source>
<extracomment>figures/worked</extracomment>
<translation>Ungünstigster Kreis der Pumpe</translation>
</message>
<message>
<source>design flow: Q = P / (ρ c ΔT), of a pipe the sum of those it feeds; P of an emitter: what it gives at the design's temperatures, (ΔT / 50 K)^n of its nominal output
head needed = Σ Δp round the circuit that loses most</source>
<extracomment>figures/worked</extracomment>
<translation>Auslegungsvolumenstrom: Q = P / (ρ c ΔT), bei einem Rohr die Summe dessen, was daran hängt; P einer Heizfläche: was sie bei den Auslegungstemperaturen abgibt, (ΔT / 50 K)^n ihrer Normleistung
nötige Förderhöhe = Σ Δp auf dem Kreis mit dem größten Verlust</translation>
</message>
<message>
<source>Valves that are set to a flow count as wide open on this circuit. In the situation that asks most head of the pump.</source>
<extracomment>figures/worked</extracomment>
<translation>Auf einen Volumenstrom eingestellte Ventile gelten auf diesem Kreis als ganz offen. Im Betriebszustand, der der Pumpe die größte Förderhöhe abverlangt.</translation>
</message>
<message>
<source>the way round could not be followed</source>
<extracomment>figures/worked</extracomment>
<translation>dem Umlauf ließ sich nicht folgen</translation>
</message>
<message>
<source>Design flow of {part}</source>
<extracomment>figures/worked</extracomment>
<translation>Auslegungsvolumenstrom von {part}</translation>
</message>
<message>
<source>worked: P / (ρ c ΔT)</source>
<extracomment>figures/worked</extracomment>
<translation>berechnet: P / (ρ c ΔT)</translation>
</message>
<message>
<source>Decides</source>
<extracomment>figures/worked</extracomment>
<translation>Maßgebend</translation>
</message>
<message>
<source>{decides}, in {run}</source>
<extracomment>figures/worked</extracomment>
<translation>{decides}, {run}</translation>
</message>
<message>
<source>Head needed</source>
<extracomment>figures/worked</extracomment>
<translation>Nötige Förderhöhe</translation>
</message>
<message>
<source>All losses together</source>
<extracomment>figures/worked</extracomment>
<translation>Alle Verluste zusammen</translation>
</message>
<message>
<source>, bore {bore:g} mm</source>
<extracomment>figures/worked</extracomment>
<translation>, Innendurchmesser {bore:g} mm</translation>
</message>
<message>
<source>{id}{wide}, {flow_m3_s:.3g} l/min</source>
<extracomment>figures/worked</extracomment>
<translation>{id}{wide}, {flow_m3_s:.3g} l/min</translation>
</message>
<message>
<source>Next, {part}, loses less by</source>
<extracomment>figures/worked</extracomment>
<translation>Der nächste, {part}, verliert weniger, nämlich um</translation>
</message>
<message>
<source>Hot water heated as it is drawn</source>
<extracomment>figures/worked</extracomment>
<translation>Warmwasser im Durchlauf</translation>
</message>
<message>
<source>q = P / (ρ c (T − Tc))
what the outlets ask for, from their loading units and the largest (EN 806-3, Annex B)</source>
<extracomment>figures/worked</extracomment>
<translation>q = P / (ρ c (T − Tc))
was die Zapfstellen verlangen, aus ihren Belastungswerten und der größten (EN 806-3, Anhang B)</translation>
</message>
<message>
<source>A heat balance.</source>
<extracomment>figures/worked</extracomment>
<translation>Eine Wärmebilanz.</translation>
</message>
<message>
<source>; its Annex B for the design flow (from memory).</source>
<extracomment>figures/worked</extracomment>
<translation>; deren Anhang B für den Auslegungsvolumenstrom (aus dem Gedächtnis).</translation>
</message>
<message>
<source>All of the output heats the drinking water, none of it the rooms, and none is lost. Whatever the maker states as the hot flow holds for the rise he states it for.</source>
<extracomment>figures/worked</extracomment>
<translation>Die ganze Leistung erwärmt das Trinkwasser, nichts davon die Räume, und nichts geht verloren. Was der Hersteller als Warmwasser-Volumenstrom angibt, gilt für die Erwärmung, für die er es angibt.</translation>
</message>
<message>
<source>Water that comes at {cold:g} °C needs no heating to 40 °C.</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser, das mit {cold:g} °C kommt, braucht keine Erwärmung auf 40 °C.</translation>
</message>
<message>
<source>Its output heats to 40 °C</source>
<extracomment>figures/worked</extracomment>
<translation>Die Leistung erwärmt auf 40 °C</translation>
</message>
<message>
<source>Its output heats to 60 °C</source>
<extracomment>figures/worked</extracomment>
<translation>Die Leistung erwärmt auf 60 °C</translation>
</message>
<message>
<source>Hot flow stated</source>
<extracomment>figures/worked</extracomment>
<translation>Angegebener Warmwasser-Volumenstrom</translation>
</message>
<message>
<source>, at the least</source>
<extracomment>figures/worked</extracomment>
<translation>, mindestens</translation>
</message>
<message>
<source>Its outlets ask for, mixed to 40 °C{least}</source>
<extracomment>figures/worked</extracomment>
<translation>Die Zapfstellen verlangen, gemischt auf 40 °C{least}</translation>
</message>
<message>
<source>Outlets not counted for want of {missing}.</source>
<extracomment>figures/worked</extracomment>
<translation>Zapfstellen nicht gezählt, weil fehlt: {missing}.</translation>
</message>
<message>
<source>Content that always circulates</source>
<extracomment>figures/worked</extracomment>
<translation>Immer umlaufender Inhalt</translation>
</message>
<message>
<source>Vround = Σ content of what lies on a way round through the heat source while heating is called; the least of these situations</source>
<extracomment>figures/worked</extracomment>
<translation>Vum = Σ Inhalt dessen, was auf einem Umlauf durch den Wärmeerzeuger liegt, während Heizung gefordert ist; das Kleinste dieser Betriebszustände</translation>
</message>
<message>
<source>The least circulating content: the maker of the heat source. That thermostatic heads count as shut, and motor valves as their controls stand them: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>Der Mindestinhalt im Umlauf: Hersteller des Wärmeerzeugers. Dass Thermostatköpfe als geschlossen gelten und Motorventile so, wie ihre Regler sie stellen: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Situations with heating called: at run-on the heat source is off, and behind a coil or an exchanger the heat is taken up. Hand valves open, thermostatic heads and emitters with a hand wheel shut; arrows fitted the right way. Where a bypass is the only way round, its water counts only while it is open.</source>
<extracomment>figures/worked</extracomment>
<translation>Betriebszustände mit geforderter Heizung: Beim Nachlauf ist der Wärmeerzeuger aus, und hinter einer Heizschlange oder einem Wärmeübertrager wird die Wärme aufgenommen. Handventile offen, Thermostatköpfe und Heizflächen mit Handrad geschlossen; Pfeile richtig herum. Wo ein Überströmventil der einzige Umweg ist, zählt sein Wasser nur, solange es offen ist.</translation>
</message>
<message>
<source>Vmin</source>
<extracomment>figures/worked</extracomment>
<translation>Vmin</translation>
</message>
<message>
<source>Content that must circulate</source>
<extracomment>figures/worked</extracomment>
<translation>Inhalt, der umlaufen muss</translation>
</message>
<message>
<source>no pump drives water round, so nothing says what circulates</source>
<extracomment>figures/worked</extracomment>
<translation>keine Pumpe fördert Wasser im Umlauf, also sagt nichts, was umläuft</translation>
</message>
<message>
<source>hot water alone takes its heat, and what is behind a coil takes it up</source>
<extracomment>figures/worked</extracomment>
<translation>Warmwasser allein nimmt seine Wärme, und was hinter einer Heizschlange liegt, nimmt sie auf</translation>
</message>
<message>
<source>Vround</source>
<extracomment>figures/worked</extracomment>
<translation>Vum</translation>
</message>
<message>
<source>Goes round, {name}</source>
<extracomment>figures/worked</extracomment>
<translation>Läuft um, {name}</translation>
</message>
<message>
<source>worked from the drawing</source>
<extracomment>figures/worked</extracomment>
<translation>aus der Zeichnung berechnet</translation>
</message>
<message>
<source>Least that goes round</source>
<extracomment>figures/worked</extracomment>
<translation>Das Kleinste, was umläuft</translation>
</message>
<message>
<source>That is in the situation</source>
<extracomment>figures/worked</extracomment>
<translation>Das ist im Betriebszustand</translation>
</message>
<message>
<source>To spare</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve</translation>
</message>
<message>
<source>Short by</source>
<extracomment>figures/worked</extracomment>
<translation>Es fehlen</translation>
</message>
<message>
<source>All of the water content</source>
<extracomment>figures/worked</extracomment>
<translation>Gesamter Wasserinhalt</translation>
</message>
<message>
<source>Short of what must circulate by, at least</source>
<extracomment>figures/worked</extracomment>
<translation>Zu wenig für den nötigen Umlauf, mindestens um</translation>
</message>
<message>
<source>What the main must give</source>
<extracomment>figures/worked</extracomment>
<translation>Was der Hausanschluss leisten muss</translation>
</message>
<message>
<source>LU = sum of the outlets' loading units
q from LU and the largest single outlet (EN 806-3, Annex B)
left at the highest outlet = running pressure − 0.0981 bar for each metre of height</source>
<extracomment>figures/worked</extracomment>
<translation>LU = Summe der Belastungswerte der Zapfstellen
q aus LU und der größten einzelnen Zapfstelle (EN 806-3, Anhang B)
bleibt an der höchsten Zapfstelle = Fließdruck − 0,0981 bar je Meter Höhe</translation>
</message>
<message>
<source>EN 806-3:2006, Table 2 (units) and Annex B (curve, from memory); NHBC Standards 8.1.5 (1.5 bar); 20 l/min for a mains-fed store: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>EN 806-3:2006, Tabelle 2 (Belastungswerte) und Anhang B (Kurve, aus dem Gedächtnis); NHBC Standards 8.1.5 (1,5 bar); 20 l/min für einen geschlossenen Speicher: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Losses in the pipes, valves and the store come on top and are not counted. Units of EN 806-3 only: those of the older BS 6700 are other units and must not be mixed with them.</source>
<extracomment>figures/worked</extracomment>
<translation>Verluste in Rohren, Ventilen und Speicher kommen hinzu und sind nicht gezählt. Nur Belastungswerte nach EN 806-3: Die der älteren BS 6700 sind andere und dürfen nicht damit vermischt werden.</translation>
</message>
<message>
<source>Not known: {missing}.</source>
<extracomment>figures/worked</extracomment>
<translation>Nicht bekannt: {missing}.</translation>
</message>
<message>
<source>Loading units{least}</source>
<extracomment>figures/worked</extracomment>
<translation>Belastungswerte{least}</translation>
</message>
<message>
<source>Flow to design for{least}</source>
<extracomment>figures/worked</extracomment>
<translation>Auslegungsvolumenstrom{least}</translation>
</message>
<message>
<source>Least flow for a mains-fed store</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestvolumenstrom für einen geschlossenen Speicher</translation>
</message>
<message>
<source>Flow the main gives</source>
<extracomment>figures/worked</extracomment>
<translation>Volumenstrom, den der Hausanschluss gibt</translation>
</message>
<message>
<source>The main gives</source>
<extracomment>figures/worked</extracomment>
<translation>Der Hausanschluss gibt</translation>
</message>
<message>
<source>Running pressure at the main</source>
<extracomment>figures/worked</extracomment>
<translation>Fließdruck am Hausanschluss</translation>
</message>
<message>
<source>Least running pressure for a mains-fed store</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestfließdruck für einen geschlossenen Speicher</translation>
</message>
<message>
<source>Least for a mains-fed store</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestwert für einen geschlossenen Speicher</translation>
</message>
<message>
<source>Height of {name} above the main</source>
<extracomment>figures/worked</extracomment>
<translation>Höhe von {name} über dem Hausanschluss</translation>
</message>
<message>
<source>worked out from the heights</source>
<extracomment>figures/worked</extracomment>
<translation>aus den Höhen berechnet</translation>
</message>
<message>
<source>Left at {name}, the highest</source>
<extracomment>figures/worked</extracomment>
<translation>Bleibt an {name}, der höchsten</translation>
</message>
<message>
<source>Least running pressure at an outlet</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestfließdruck an einer Zapfstelle</translation>
</message>
<message>
<source>Least at an outlet</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestwert an einer Zapfstelle</translation>
</message>
<message>
<source>V40 = V (Ts − Tc) / (40 − Tc)</source>
<extracomment>figures/worked</extracomment>
<translation>V40 = V (Ts − Tc) / (40 − Tc)</translation>
</message>
<message>
<source>A heat balance; mixed water at 40 °C: Commission Regulation (EU) 814/2013 (from memory). Legionella: WFR guidance G18.2; HSG274 part 2.</source>
<extracomment>figures/worked</extracomment>
<translation>Eine Wärmebilanz; Mischwasser von 40 °C: Verordnung (EU) 814/2013 der Kommission (aus dem Gedächtnis). Legionellen: WFR-Richtlinie G18.2; HSG274 Teil 2.</translation>
</message>
<message>
<source>The ideal: every litre leaves as hot as it was stored, and nothing is heated meanwhile. A real store mixes cold into the rest and gives less; its maker's V40 is measured (BS EN 12897).</source>
<extracomment>figures/worked</extracomment>
<translation>Das Ideal: Jeder Liter kommt so heiß heraus, wie er gespeichert war, und nichts wird inzwischen erwärmt. Ein wirklicher Speicher mischt Kaltes in den Rest und gibt weniger; V40 des Herstellers ist gemessen (BS EN 12897).</translation>
</message>
<message>
<source>Share of it that comes hot</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil davon, der warm kommt</translation>
</message>
<message>
<source>What a bath takes</source>
<extracomment>figures/worked</extracomment>
<translation>Was ein Vollbad braucht</translation>
</message>
<message>
<source>Baths</source>
<extracomment>figures/worked</extracomment>
<translation>Vollbäder</translation>
</message>
<message>
<source>Least temperature against legionella</source>
<extracomment>figures/worked</extracomment>
<translation>Mindesttemperatur gegen Legionellen</translation>
</message>
<message>
<source>stored at {hot:g} °C, not below {least:g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>gespeichert mit {hot:g} °C, nicht unter {least:g} °C</translation>
</message>
<message>
<source>stored below {least:g} °C: legionella may grow</source>
<extracomment>figures/worked</extracomment>
<translation>gespeichert unter {least:g} °C: Legionellen können wachsen</translation>
</message>
<message>
<source>Legionella</source>
<extracomment>figures/worked</extracomment>
<translation>Legionellen</translation>
</message>
<message>
<source>Velocity in each pipe</source>
<extracomment>figures/worked</extracomment>
<translation>Geschwindigkeit in jedem Rohr</translation>
</message>
<message>
<source>v = 4 Q / (π d²)
bore that is quiet = d √(v / limit)</source>
<extracomment>figures/worked</extracomment>
<translation>v = 4 Q / (π d²)
leiser Innendurchmesser = d √(v / Grenzwert)</translation>
</message>
<message>
<source>Mean velocity over the bore; valves and sharp bends can be heard sooner.</source>
<extracomment>figures/worked</extracomment>
<translation>Mittlere Geschwindigkeit über den Querschnitt; Ventile und scharfe Bögen hört man früher.</translation>
</message>
<message>
<source>Highest velocity</source>
<extracomment>figures/worked</extracomment>
<translation>Höchste Geschwindigkeit</translation>
</message>
<message>
<source>no pump drives water through any pipe</source>
<extracomment>figures/worked</extracomment>
<translation>keine Pumpe fördert Wasser durch ein Rohr</translation>
</message>
<message>
<source>Fastest of all</source>
<extracomment>figures/worked</extracomment>
<translation>Am schnellsten von allen</translation>
</message>
<message>
<source>{pipe}, bore {bore_mm:g} mm, {run}</source>
<extracomment>figures/worked</extracomment>
<translation>{pipe}, Innendurchmesser {bore_mm:g} mm, {run}</translation>
</message>
<message>
<source>Too fast: {pipe} would want a bore of</source>
<extracomment>figures/worked</extracomment>
<translation>Zu schnell: {pipe} bräuchte einen Innendurchmesser von</translation>
</message>
<message>
<source>Open vent: size and height above the water</source>
<extracomment>figures/worked</extracomment>
<translation>Offene Entlüftung: Größe und Höhe über dem Wasserspiegel</translation>
</message>
<message>
<source>least height by gravity: h = 0.04 H + 0.15 m
against a pump: h above the head that pushes on the vent</source>
<extracomment>figures/worked</extracomment>
<translation>Mindesthöhe bei Schwerkraft: h = 0,04 H + 0,15 m
gegen eine Pumpe: h über der Förderhöhe, die auf die Entlüftung drückt</translation>
</message>
<message>
<source>BS 5449: 22 mm, and 450 mm for a pumped circuit (as taught in trade textbooks; bore of 19 mm from memory). WFR guidance to Schedule 2, G20.3: 0.04 H + 0.15, written for a store's vent. Hydrostatics.</source>
<extracomment>figures/worked</extracomment>
<translation>BS 5449: 22 mm, und 450 mm für einen Pumpenkreis (wie in Fachbüchern gelehrt; 19 mm Innendurchmesser aus dem Gedächtnis). WFR-Richtlinie zu Schedule 2, G20.3: 0,04 H + 0,15, geschrieben für die Entlüftung eines Speichers. Hydrostatik.</translation>
</message>
<message>
<source>The pump at its shut-off head, the most it can put there. H is told down to where the heat source or the store stands. Only the vent's own pipe is measured here, from the circuit to its end.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Pumpe bei Nullförderhöhe, dem Höchsten, was sie dort aufbringen kann. H zählt bis hinab zum Wärmeerzeuger oder Speicher. Nur das eigene Rohr der Entlüftung wird hier gemessen, vom Kreis bis zu seinem Ende.</translation>
</message>
<message>
<source>Bore of {pipe}</source>
<extracomment>figures/worked</extracomment>
<translation>Innendurchmesser von {pipe}</translation>
</message>
<message>
<source>given, or of standard tube of its size</source>
<extracomment>figures/worked</extracomment>
<translation>angegeben oder vom genormten Rohr seiner Größe</translation>
</message>
<message>
<source>Narrowest bore of its pipe</source>
<extracomment>figures/worked</extracomment>
<translation>Engster Innendurchmesser ihres Rohrs</translation>
</message>
<message>
<source>Smallest bore of an open vent</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinster Innendurchmesser einer offenen Entlüftung</translation>
</message>
<message>
<source>Smallest bore allowed</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinster erlaubter Innendurchmesser</translation>
</message>
<message>
<source>It ends above the water</source>
<extracomment>figures/worked</extracomment>
<translation>Sie endet über dem Wasserspiegel</translation>
</message>
<message>
<source>Water of {part}</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser von {part}</translation>
</message>
<message>
<source>From the water down to what heats</source>
<extracomment>figures/worked</extracomment>
<translation>Vom Wasserspiegel hinab zu dem, was heizt</translation>
</message>
<message>
<source>Least height, turning by gravity</source>
<extracomment>figures/worked</extracomment>
<translation>Mindesthöhe bei Umlauf durch Schwerkraft</translation>
</message>
<message>
<source>Least height</source>
<extracomment>figures/worked</extracomment>
<translation>Mindesthöhe</translation>
</message>
<message>
<source>Least height of a pumped circuit's vent</source>
<extracomment>figures/worked</extracomment>
<translation>Mindesthöhe der Entlüftung eines Pumpenkreises</translation>
</message>
<message>
<source>Least height, fully pumped</source>
<extracomment>figures/worked</extracomment>
<translation>Mindesthöhe bei vollem Pumpenumlauf</translation>
</message>
<message>
<source>Pump head that pushes on it</source>
<extracomment>figures/worked</extracomment>
<translation>Förderhöhe, die darauf drückt</translation>
</message>
<message>
<source>Height to spare above that</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve an Höhe darüber</translation>
</message>
<message>
<source>Height above the water</source>
<extracomment>figures/worked</extracomment>
<translation>Höhe über dem Wasserspiegel</translation>
</message>
<message>
<source>Pressure in time</source>
<extracomment>figures/worked</extracomment>
<translation>Druck im zeitlichen Verlauf</translation>
</message>
<message>
<source>P dt = m c dT
V (e − 3 g ΔT) = V k (p − pstart) + G (1 − (pstart + 1)/(p + 1))
k = compressibility of water + d/(E s) of the tube; g = growth of the tube by warmth
G = gas in the vessel, none where it is full of water
safety valve: p stays at psv, what swells further goes out</source>
<extracomment>figures/worked</extracomment>
<translation>P dt = m c dT
V (e − 3 g ΔT) = V k (p − pstart) + G (1 − (pstart + 1)/(p + 1))
k = Kompressibilität des Wassers + d/(E s) des Rohrs; g = Wärmedehnung des Rohrs
G = Gas im Gefäß, keines, wo es voll Wasser ist
Sicherheitsventil: p bleibt bei psv, was sich weiter ausdehnt, tritt aus</translation>
</message>
<message>
<source>A heat balance; Boyle's law; density and compressibility of water: Kell, 1975 (from memory; within 0.1 % of IAPWS-95); stretch of the tube as in the theory of water hammer, copper of 22 mm (from memory).</source>
<extracomment>figures/worked</extracomment>
<translation>Eine Wärmebilanz; Gesetz von Boyle; Dichte und Kompressibilität von Wasser: Kell, 1975 (aus dem Gedächtnis; auf 0,1 % genau zu IAPWS-95); Dehnung des Rohrs wie in der Theorie des Druckstoßes, Kupfer 22 mm (aus dem Gedächtnis).</translation>
</message>
<message>
<source>Full output from the fill temperature on, no heat taken away, all the water alike; 0 to 110 °C, 100 bar. Pressed steel gives more than tube and slows the rise; air in the water slows it much. The valve is taken to hold its setting, level with the vessel; its full lift needs up to a tenth more.</source>
<extracomment>figures/worked</extracomment>
<translation>Volle Leistung ab der Fülltemperatur, keine Wärme abgeführt, alles Wasser gleich warm; 0 bis 110 °C, 100 bar. Gepresstes Blech gibt mehr nach als Rohr und verlangsamt den Anstieg; Luft im Wasser verlangsamt ihn sehr. Das Ventil soll seine Einstellung auf Höhe des Gefäßes halten; sein voller Hub braucht bis zu ein Zehntel mehr.</translation>
</message>
<message>
<source>with the vessel</source>
<extracomment>figures/worked</extracomment>
<translation>mit dem Ausdehnungsgefäß</translation>
</message>
<message>
<source>with the vessel full of water</source>
<extracomment>figures/worked</extracomment>
<translation>mit dem Ausdehnungsgefäß voll Wasser</translation>
</message>
<message>
<source>{how}: safety valve lifts after</source>
<extracomment>figures/worked</extracomment>
<translation>{how}: Sicherheitsventil öffnet nach</translation>
</message>
<message>
<source>{how}: it lifts at</source>
<extracomment>figures/worked</extracomment>
<translation>{how}: es öffnet bei</translation>
</message>
<message>
<source>{how}: it has let out by {temperature_c:.4g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>{how}: abgelassen bis {temperature_c:.4g} °C</translation>
</message>
<message>
<source>{how}: below the safety valve by</source>
<extracomment>figures/worked</extracomment>
<translation>{how}: unter dem Sicherheitsventil um</translation>
</message>
<message>
<source>{how}: after {seconds}, at {temperature_c:.3g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>{how}: nach {seconds}, bei {temperature_c:.3g} °C</translation>
</message>
<message>
<source>{seconds:.3g} s</source>
<extracomment>figures/worked</extracomment>
<translation>{seconds:.3g} s</translation>
</message>
<message>
<source>{seconds:.3g} min</source>
<extracomment>figures/worked</extracomment>
<translation>{seconds:.3g} min</translation>
</message>
<message>
<source>none: the top draws in air</source>
<extracomment>figures/worked</extracomment>
<translation>keiner: Oben wird Luft angesaugt</translation>
</message>
<message>
<source>{cold:.3g} bar</source>
<extracomment>figures/worked</extracomment>
<translation>{cold:.3g} bar</translation>
</message>
<message>
<source>with the vessel full of water: pressure cold again</source>
<extracomment>figures/worked</extracomment>
<translation>mit dem Ausdehnungsgefäß voll Wasser: Druck wieder kalt</translation>
</message>
<message>
<source>shut in by valves, no safety valve</source>
<extracomment>figures/worked</extracomment>
<translation>von Ventilen eingeschlossen, ohne Sicherheitsventil</translation>
</message>
<message>
<source>{how}: each degree at {at:.3g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>{how}: jedes Grad bei {at:.3g} °C</translation>
</message>
<message>
<source>stretch of the tube (shut in, at {to_c:.3g} °C)</source>
<extracomment>figures/worked</extracomment>
<translation>Dehnung des Rohrs (eingeschlossen, bei {to_c:.3g} °C)</translation>
</message>
<message>
<source>Pressure map</source>
<extracomment>figures/worked</extracomment>
<translation>Druckverteilung</translation>
</message>
<message>
<source>p = p fixed − 0.0981 × (height − the fixed point's) + what the pumps add there
fixed point: the expansion vessel (fill pressure cold; hot by Boyle's law), or the open water level
above boiling = lowest p + 1.013 − vapour pressure at the highest temperature</source>
<extracomment>figures/worked</extracomment>
<translation>p = p fest − 0,0981 × (Höhe − Höhe des Festpunkts) + was die Pumpen dort hinzufügen
Festpunkt: das Ausdehnungsgefäß (Fülldruck kalt; heiß nach Boyle) oder der offene Wasserspiegel
über dem Siedepunkt = niedrigstes p + 1,013 − Dampfdruck bei der höchsten Temperatur</translation>
</message>
<message>
<source>Hydrostatics at 1000 kg/m³ and 9.81 m/s²; that a pump leaves the vessel's pressure as it is: Building Services Engineering and common practice; vapour pressure: Antoine's equation (from memory). Pumps by the solved network.</source>
<extracomment>figures/worked</extracomment>
<translation>Hydrostatik bei 1000 kg/m³ und 9,81 m/s²; dass eine Pumpe den Druck am Ausdehnungsgefäß nicht ändert: Building Services Engineering und übliche Praxis; Dampfdruck: Gleichung von Antoine (aus dem Gedächtnis). Pumpen nach dem gelösten Netz.</translation>
</message>
<message>
<source>Gauge pressures at the height of each part. The lowest is taken cold, as filled; heating up only adds. The highest is hot, with nothing let out by the safety valve. Parts of unknown height are left out.</source>
<extracomment>figures/worked</extracomment>
<translation>Überdrücke auf der Höhe jedes Bauteils. Der niedrigste gilt kalt, wie gefüllt; Aufheizen erhöht nur. Der höchste gilt heiß, ohne dass das Sicherheitsventil etwas ablässt. Bauteile unbekannter Höhe sind weggelassen.</translation>
</message>
<message>
<source>no expansion vessel is joined to this water, so that nothing holds its pressure</source>
<extracomment>figures/worked</extracomment>
<translation>an diesem Wasser sitzt kein Ausdehnungsgefäß, also hält nichts seinen Druck</translation>
</message>
<message>
<source>Height of {part}</source>
<extracomment>figures/worked</extracomment>
<translation>Höhe von {part}</translation>
</message>
<message>
<source>given heights and rises</source>
<extracomment>figures/worked</extracomment>
<translation>angegebene Höhen und Anstiege</translation>
</message>
<message>
<source>the water is open, and no cistern that feeds it is drawn</source>
<extracomment>figures/worked</extracomment>
<translation>das Wasser ist offen, und kein Behälter, der es speist, ist gezeichnet</translation>
</message>
<message>
<source>Water level above the datum</source>
<extracomment>figures/worked</extracomment>
<translation>Wasserspiegel über der Bezugshöhe</translation>
</message>
<message>
<source>Lowest, cold: at {where}</source>
<extracomment>figures/worked</extracomment>
<translation>Niedrigster, kalt: an {where}</translation>
</message>
<message>
<source>Highest, hot: at {where}</source>
<extracomment>figures/worked</extracomment>
<translation>Höchster, heiß: an {where}</translation>
</message>
<message>
<source>Above drawing in air, at the lowest</source>
<extracomment>figures/worked</extracomment>
<translation>Abstand zum Luftansaugen, an der niedrigsten Stelle</translation>
</message>
<message>
<source>Draws in air, at the lowest, by</source>
<extracomment>figures/worked</extracomment>
<translation>Saugt Luft an, an der niedrigsten Stelle, um</translation>
</message>
<message>
<source>{ends:.2f} to {ends_2:.2f}</source>
<extracomment>figures/worked</extracomment>
<translation>{ends:.2f} bis {ends_2:.2f}</translation>
</message>
<message>
<source>Water boils there at</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser siedet dort bei</translation>
</message>
<message>
<source>Above boiling</source>
<extracomment>figures/worked</extracomment>
<translation>Über dem Siedepunkt</translation>
</message>
<message>
<source>Boils: too low</source>
<extracomment>figures/worked</extracomment>
<translation>Siedet: zu niedrig</translation>
</message>
<message>
<source>{said} at {hottest_c:.4g} °C, by</source>
<extracomment>figures/worked</extracomment>
<translation>{said} bei {hottest_c:.4g} °C, um</translation>
</message>
<message>
<source>all at rest</source>
<extracomment>figures/worked</extracomment>
<translation>alles in Ruhe</translation>
</message>
<message>
<source>{part}, {situation}</source>
<extracomment>figures/worked</extracomment>
<translation>{part}, {situation}</translation>
</message>
<message>
<source>Gauge of {name}</source>
<extracomment>figures/worked</extracomment>
<translation>Manometer von {name}</translation>
</message>
<message>
<source>{name} reads, cold, at rest</source>
<extracomment>figures/worked</extracomment>
<translation>{name} zeigt, kalt, in Ruhe</translation>
</message>
<message>
<source>{cold_bar:.2f} to {cold_bar_2:.2f}</source>
<extracomment>figures/worked</extracomment>
<translation>{cold_bar:.2f} bis {cold_bar_2:.2f}</translation>
</message>
<message>
<source>{name} reads, cold, pumps running</source>
<extracomment>figures/worked</extracomment>
<translation>{name} zeigt, kalt, Pumpen laufen</translation>
</message>
<message>
<source>{hot_bar:.2f} to {hot_bar_2:.2f}</source>
<extracomment>figures/worked</extracomment>
<translation>{hot_bar:.2f} bis {hot_bar_2:.2f}</translation>
</message>
<message>
<source>{name} reads, hot, pumps running</source>
<extracomment>figures/worked</extracomment>
<translation>{name} zeigt, heiß, Pumpen laufen</translation>
</message>
<message>
<source>{part} would see more than it is made for, by</source>
<extracomment>figures/worked</extracomment>
<translation>{part} wäre mehr ausgesetzt, als es aushält, um</translation>
</message>
<message>
<source>{usual} (lowest)</source>
<extracomment>figures/worked</extracomment>
<translation>{usual} (niedrigster)</translation>
</message>
<message>
<source>Duty of the pump</source>
<extracomment>figures/worked</extracomment>
<translation>Betriebspunkt der Pumpe</translation>
</message>
<message>
<source>works where H0 (1 − (Q/Q0)²) = what the circuit loses at Q
needed: Q = Σ P / (ρ c ΔT) of what it serves, H = losses of the index circuit at design flows
to spare = pump's head at the needed flow − needed head</source>
<extracomment>figures/worked</extracomment>
<translation>arbeitet, wo H0 (1 − (Q/Q0)²) = Verlust des Kreises bei Q
nötig: Q = Σ P / (ρ c ΔT) dessen, was daran hängt, H = Verluste des ungünstigsten Kreises bei Auslegungsvolumenströmen
Reserve = Förderhöhe der Pumpe beim nötigen Volumenstrom − nötige Förderhöhe</translation>
</message>
<message>
<source>Where all that is called wants more than the heat sources give, its design is cut to that. A coil without a stated power takes what the others leave of the heat source's output.</source>
<extracomment>figures/worked</extracomment>
<translation>Wo alles Geforderte mehr will, als die Wärmeerzeuger geben, ist seine Auslegung darauf gekürzt. Eine Heizschlange ohne angegebene Leistung nimmt, was die anderen von der Leistung des Wärmeerzeugers übrig lassen.</translation>
</message>
<message>
<source>it runs in no situation</source>
<extracomment>figures/worked</extracomment>
<translation>sie läuft in keinem Betriebszustand</translation>
</message>
<message>
<source>flow, {run}</source>
<extracomment>figures/worked</extracomment>
<translation>Volumenstrom, {run}</translation>
</message>
<message>
<source>{run}: flow</source>
<extracomment>figures/worked</extracomment>
<translation>{run}: Volumenstrom</translation>
</message>
<message>
<source>{run}: head</source>
<extracomment>figures/worked</extracomment>
<translation>{run}: Förderhöhe</translation>
</message>
<message>
<source>{situation}: needed</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: nötig</translation>
</message>
<message>
<source>not told: {why}</source>
<extracomment>figures/worked</extracomment>
<translation>nicht angegeben: {why}</translation>
</message>
<message>
<source>{situation}: flow needed</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: nötiger Volumenstrom</translation>
</message>
<message>
<source>{situation}: head needed</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: nötige Förderhöhe</translation>
</message>
<message>
<source>{situation}: head {what}</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: Förderhöhe, {what}</translation>
</message>
<message>
<source>to spare</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve</translation>
</message>
<message>
<source>short by</source>
<extracomment>figures/worked</extracomment>
<translation>es fehlen</translation>
</message>
<message>
<source>Capacity of the safety valves</source>
<extracomment>figures/worked</extracomment>
<translation>Abblaseleistung der Sicherheitsventile</translation>
</message>
<message>
<source>to spare = Σ capacity − Σ output</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve = Σ Abblaseleistung − Σ Leistung</translation>
</message>
<message>
<source>BS EN 12828, 4.6.2.2 (from memory): the safety valve passes the whole output of its heat generator; capacities to BS EN ISO 4126-1, by the maker. That a valve built into a heat source serves that one and no other: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>BS EN 12828, 4.6.2.2 (aus dem Gedächtnis): Das Sicherheitsventil bläst die ganze Leistung seines Wärmeerzeugers ab; Abblaseleistungen nach BS EN ISO 4126-1, vom Hersteller. Dass ein in einen Wärmeerzeuger eingebautes Ventil nur diesen schützt: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Capacities as stated for steam at the valve's setting; every heat source at full output at once.</source>
<extracomment>figures/worked</extracomment>
<translation>Abblaseleistungen wie für Dampf beim Ansprechdruck angegeben; alle Wärmeerzeuger zugleich mit voller Leistung.</translation>
</message>
<message>
<source>Output of {each}</source>
<extracomment>figures/worked</extracomment>
<translation>Leistung von {each}</translation>
</message>
<message>
<source>Capacity of {each}</source>
<extracomment>figures/worked</extracomment>
<translation>Abblaseleistung von {each}</translation>
</message>
<message>
<source>Heat to blow off</source>
<extracomment>figures/worked</extracomment>
<translation>Abzublasende Wärme</translation>
</message>
<message>
<source>Secondary return: water, length and loss</source>
<extracomment>figures/worked</extracomment>
<translation>Zirkulation: Wasser, Länge und Verlust</translation>
</message>
<message>
<source>V = sum of bore area × length
Φ = sum of loss a metre × length
q = Φ / (ρ c × 5 K)</source>
<extracomment>figures/worked</extracomment>
<translation>V = Summe von Querschnitt × Länge
Φ = Summe von Verlust je Meter × Länge
q = Φ / (ρ c × 5 K)</translation>
</message>
<message>
<source>Insulated pipe: the most that the Domestic Building Services Compliance Guide lets it lose (from memory), in proportion to the difference from the room. Bare pipe: EN ISO 12241 (from memory). A drop of 5 K on the way: common practice, no source. Return at 50 °C or above: trade guidance.</source>
<extracomment>figures/worked</extracomment>
<translation>Gedämmtes Rohr: das Höchste, was der Domestic Building Services Compliance Guide es verlieren lässt (aus dem Gedächtnis), im Verhältnis zum Abstand von der Raumtemperatur. Blankes Rohr: EN ISO 12241 (aus dem Gedächtnis). 5 K Abfall unterwegs: übliche Praxis, ohne Quelle. Rücklauf mit 50 °C oder mehr: Richtlinien des Handwerks.</translation>
</message>
<message>
<source>Still air of 15 °C and water as hot as the store all the way; dull tube; fittings and brackets lose more. Plastic tube is told as copper of its outside diameter.</source>
<extracomment>figures/worked</extracomment>
<translation>Ruhende Luft von 15 °C und durchweg Wasser so warm wie der Speicher; stumpfes Rohr; Formstücke und Schellen verlieren mehr. Kunststoffrohr ist wie Kupfer seines Außendurchmessers gerechnet.</translation>
</message>
<message>
<source>Pipe that is kept hot</source>
<extracomment>figures/worked</extracomment>
<translation>Warm gehaltenes Rohr</translation>
</message>
<message>
<source>Water in it</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser darin</translation>
</message>
<message>
<source>Content beyond which the vessel must be larger</source>
<extracomment>figures/worked</extracomment>
<translation>Inhalt, ab dem das Gefäß größer sein muss</translation>
</message>
<message>
<source>A larger vessel beyond</source>
<extracomment>figures/worked</extracomment>
<translation>Größeres Gefäß ab</translation>
</message>
<message>
<source>Not known: {unknown}.</source>
<extracomment>figures/worked</extracomment>
<translation>Nicht bekannt: {unknown}.</translation>
</message>
<message>
<source>Length of {pipe}</source>
<extracomment>figures/worked</extracomment>
<translation>Länge von {pipe}</translation>
</message>
<message>
<source>{pipe} insulated</source>
<extracomment>figures/worked</extracomment>
<translation>{pipe} gedämmt</translation>
</message>
<message>
<source>Loss, if what is not known is insulated</source>
<extracomment>figures/worked</extracomment>
<translation>Verlust, wenn das Unbekannte gedämmt ist</translation>
</message>
<message>
<source>Loss, if what is not known is bare</source>
<extracomment>figures/worked</extracomment>
<translation>Verlust, wenn das Unbekannte blank ist</translation>
</message>
<message>
<source>Loss as drawn</source>
<extracomment>figures/worked</extracomment>
<translation>Verlust wie gezeichnet</translation>
</message>
<message>
<source>Loss if all of it were insulated</source>
<extracomment>figures/worked</extracomment>
<translation>Verlust, wenn alles gedämmt wäre</translation>
</message>
<message>
<source>Loss in a day{most}</source>
<extracomment>figures/worked</extracomment>
<translation>Verlust am Tag{most}</translation>
</message>
<message>
<source>Flow that keeps the drop to 5 K</source>
<extracomment>figures/worked</extracomment>
<translation>Volumenstrom, der den Abfall bei 5 K hält</translation>
</message>
<message>
<source>Flow through the heat source at pump run-on</source>
<extracomment>figures/worked</extracomment>
<translation>Volumenstrom durch den Wärmeerzeuger beim Pumpennachlauf</translation>
</message>
<message>
<source>where H0 (1 − (Q/Q0)²) = what the ways still open lose
to spare = Q − Qmin</source>
<extracomment>figures/worked</extracomment>
<translation>wo H0 (1 − (Q/Q0)²) = Verlust der noch offenen Wege
Reserve = Q − Qmin</translation>
</message>
<message>
<source>Qmin</source>
<extracomment>figures/worked</extracomment>
<translation>Qmin</translation>
</message>
<message>
<source>Set difference of {bypass}</source>
<extracomment>figures/worked</extracomment>
<translation>Eingestellte Druckdifferenz von {bypass}</translation>
</message>
<message>
<source>the flow through it can't be told</source>
<extracomment>figures/worked</extracomment>
<translation>der Volumenstrom hindurch lässt sich nicht angeben</translation>
</message>
<message>
<source>A bypass of its own is built in: what it lets through is the maker's, and not counted here.</source>
<extracomment>figures/worked</extracomment>
<translation>Ein eigenes Überströmventil ist eingebaut: Was es durchlässt, weiß der Hersteller; hier ist es nicht gezählt.</translation>
</message>
<message>
<source>no run-on</source>
<extracomment>figures/worked</extracomment>
<translation>kein Nachlauf</translation>
</message>
<message>
<source>{situation}: flow</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: Volumenstrom</translation>
</message>
<message>
<source>{situation}: of it through {bypass}</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: davon durch {bypass}</translation>
</message>
<message>
<source>{situation}: {what}</source>
<extracomment>figures/worked</extracomment>
<translation>{situation}: {what}</translation>
</message>
<message>
<source>Heat the store loses while it stands</source>
<extracomment>figures/worked</extracomment>
<translation>Wärmeverlust des stehenden Speichers</translation>
</message>
<message>
<source>Q = L × VF × V × 0.60 a day
L = 0.005 + 0.55 / (t + 4), with a loose jacket 0.005 + 1.76 / (t + 12.8)
VF = (120 / V)^(1/3)</source>
<extracomment>figures/worked</extracomment>
<translation>Q = L × VF × V × 0,60 am Tag
L = 0,005 + 0,55 / (t + 4), mit losem Mantel 0,005 + 1,76 / (t + 12,8)
VF = (120 / V)^(1/3)</translation>
</message>
<message>
<source>SAP 10.2, Tables 2, 2a and 2b (temperature factor 0.60: indirect store with a thermostat).</source>
<extracomment>figures/worked</extracomment>
<translation>SAP 10.2, Tabellen 2, 2a und 2b (Temperaturfaktor 0,60: mittelbar beheizter Speicher mit Thermostat).</translation>
</message>
<message>
<source>A store at about 60 °C in a heated house. Where the maker declares a loss, that goes before.</source>
<extracomment>figures/worked</extracomment>
<translation>Ein Speicher mit etwa 60 °C in einem beheizten Haus. Wo der Hersteller einen Verlust angibt, geht dieser vor.</translation>
</message>
<message>
<source>With {thickness} mm of factory insulation</source>
<extracomment>figures/worked</extracomment>
<translation>Mit {thickness} mm Werksdämmung</translation>
</message>
<message>
<source>kWh a day</source>
<extracomment>figures/worked</extracomment>
<translation>kWh am Tag</translation>
</message>
<message>
<source>With a loose jacket of {jacket_mm} mm</source>
<extracomment>figures/worked</extracomment>
<translation>Mit einem losen Mantel von {jacket_mm} mm</translation>
</message>
<message>
<source>Static pressure</source>
<extracomment>figures/worked</extracomment>
<translation>Statischer Druck</translation>
</message>
<message>
<source>p = 0.0981 × h
at the top, cold = pfill − 0.0981 × h
a gauge, cold = pfill − 0.0981 × (its height − the vessel's)</source>
<extracomment>figures/worked</extracomment>
<translation>p = 0,0981 × h
oben, kalt = pfüll − 0,0981 × h
ein Manometer, kalt = pfüll − 0,0981 × (seine Höhe − die des Gefäßes)</translation>
</message>
<message>
<source>p = 0.0981 × (water level − height)</source>
<extracomment>figures/worked</extracomment>
<translation>p = 0,0981 × (Wasserspiegel − Höhe)</translation>
</message>
<message>
<source>Hydrostatics at 1000 kg/m³ and 9.81 m/s²; that the top keeps a margin of 0.3 bar: BS EN 12828, Annex D (from memory).</source>
<extracomment>figures/worked</extracomment>
<translation>Hydrostatik bei 1000 kg/m³ und 9,81 m/s²; dass oben ein Zuschlag von 0,3 bar bleibt: BS EN 12828, Anhang D (aus dem Gedächtnis).</translation>
</message>
<message>
<source>All cold and at rest; gauge pressures; the fill pressure holds at the vessel, the lowest of several.</source>
<extracomment>figures/worked</extracomment>
<translation>Alles kalt und in Ruhe; Überdrücke; der Fülldruck gilt am Ausdehnungsgefäß, bei mehreren am niedrigsten.</translation>
</message>
<message>
<source>Top of the water above {place}</source>
<extracomment>figures/worked</extracomment>
<translation>Oberstes Wasser über {place}</translation>
</message>
<message>
<source>Margin at the top</source>
<extracomment>figures/worked</extracomment>
<translation>Zuschlag oben</translation>
</message>
<message>
<source>Left at the top, cold</source>
<extracomment>figures/worked</extracomment>
<translation>Bleibt oben, kalt</translation>
</message>
<message>
<source>Least fill pressure: static and margin</source>
<extracomment>figures/worked</extracomment>
<translation>Mindestfülldruck: statisch und Zuschlag</translation>
</message>
<message>
<source>{of} reads, cold</source>
<extracomment>figures/worked</extracomment>
<translation>{of} zeigt, kalt</translation>
</message>
<message>
<source>{fill:.3g} bar if level with {place}</source>
<extracomment>figures/worked</extracomment>
<translation>{fill:.3g} bar, wenn auf gleicher Höhe mit {place}</translation>
</message>
<message>
<source>0.2 bar instead of 0.3 (least fill pressure)</source>
<extracomment>figures/worked</extracomment>
<translation>0,2 bar statt 0,3 (Mindestfülldruck)</translation>
</message>
<message>
<source>given heights, {part}</source>
<extracomment>figures/worked</extracomment>
<translation>angegebene Höhen, {part}</translation>
</message>
<message>
<source>Pressure at {part}</source>
<extracomment>figures/worked</extracomment>
<translation>Druck an {part}</translation>
</message>
<message>
<source>{part} reads, cold</source>
<extracomment>figures/worked</extracomment>
<translation>{part} zeigt, kalt</translation>
</message>
<message>
<source>Time to heat the store</source>
<extracomment>figures/worked</extracomment>
<translation>Zeit zum Aufheizen des Speichers</translation>
</message>
<message>
<source>Q = V ρ c (Ts − Tc)
t = Q / min(Ps, Pc)
after 70 % drawn: t = 0.7 Q / min(Ps, Pc)</source>
<extracomment>figures/worked</extracomment>
<translation>Q = V ρ c (Ts − Tc)
t = Q / min(Ps, Pc)
nach 70 % Entnahme: t = 0,7 Q / min(Ps, Pc)</translation>
</message>
<message>
<source>Heat capacity of water (IAPWS-IF97); the smaller of two powers: conservation of energy. That reheating is told for 70 % drawn off: makers' practice after BS EN 12897 (from memory).</source>
<extracomment>figures/worked</extracomment>
<translation>Wärmekapazität von Wasser (IAPWS-IF97); die kleinere von zwei Leistungen: Energieerhaltung. Dass das Nachheizen für 70 % Entnahme angegeben wird: Praxis der Hersteller nach BS EN 12897 (aus dem Gedächtnis).</translation>
</message>
<message>
<source>All of the output goes to the store, the coil keeps its power to the end, and the heat that the store and its pipes lose on the way is not counted: the real time is longer.</source>
<extracomment>figures/worked</extracomment>
<translation>Die ganze Leistung geht in den Speicher, die Heizschlange behält ihre Leistung bis zum Ende, und unterwegs verlorene Wärme von Speicher und Rohren ist nicht gezählt: Die wirkliche Zeit ist länger.</translation>
</message>
<message>
<source>The coil's power is no data of this kind of store: with a weak coil it takes longer still.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Leistung der Heizschlange ist bei dieser Speicherart keine Angabe: Mit einer schwachen Heizschlange dauert es noch länger.</translation>
</message>
<message>
<source>Water that comes at {flow:g} °C never brings the store to {hot:g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser, das mit {flow:g} °C kommt, bringt den Speicher nie auf {hot:g} °C</translation>
</message>
<message>
<source>the heat source</source>
<extracomment>figures/worked</extracomment>
<translation>der Wärmeerzeuger</translation>
</message>
<message>
<source>the coil</source>
<extracomment>figures/worked</extracomment>
<translation>die Heizschlange</translation>
</message>
<message>
<source>heat source and coil alike</source>
<extracomment>figures/worked</extracomment>
<translation>Wärmeerzeuger und Heizschlange gleichermaßen</translation>
</message>
<message>
<source>{why}; the immersion heater does.</source>
<extracomment>figures/worked</extracomment>
<translation>{why}; der Elektro-Heizstab tut es.</translation>
</message>
<message>
<source>The store's thermostat, {hot:g} °C, is no hotter than the cold water, {cold:g} °C.</source>
<extracomment>figures/worked</extracomment>
<translation>Der Thermostat des Speichers, {hot:g} °C, steht nicht höher als das kalte Wasser, {cold:g} °C.</translation>
</message>
<message>
<source>The power that heats it is 0.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Leistung, die ihn erwärmt, ist 0.</translation>
</message>
<message>
<source>Heat from cold</source>
<extracomment>figures/worked</extracomment>
<translation>Wärme von kalt an</translation>
</message>
<message>
<source>Power that heats it</source>
<extracomment>figures/worked</extracomment>
<translation>Leistung, die ihn erwärmt</translation>
</message>
<message>
<source>Limited by</source>
<extracomment>figures/worked</extracomment>
<translation>Begrenzt durch</translation>
</message>
<message>
<source>From cold{least}</source>
<extracomment>figures/worked</extracomment>
<translation>Von kalt an{least}</translation>
</message>
<message>
<source>After 70 % drawn{least}</source>
<extracomment>figures/worked</extracomment>
<translation>Nach 70 % Entnahme{least}</translation>
</message>
<message>
<source>From cold by the immersion heater alone</source>
<extracomment>figures/worked</extracomment>
<translation>Von kalt an, nur mit dem Elektro-Heizstab</translation>
</message>
<message>
<source>Expansion vessel of the mains-fed store</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnungsgefäß des geschlossenen Speichers</translation>
</message>
<message>
<source>swell = C × (ρ(t1) / ρ(t2) − 1)
final = share × prv</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnung = C × (ρ(t1) / ρ(t2) − 1)
Enddruck = Anteil × prv</translation>
</message>
<message>
<source>a vessel as drawn takes V × ((charge + 1) / (fill + 1) − (charge + 1) / (final + 1))</source>
<extracomment>figures/worked</extracomment>
<translation>ein Gefäß wie gezeichnet nimmt auf: V × ((Vordruck + 1) / (Fülldruck + 1) − (Vordruck + 1) / (Enddruck + 1))</translation>
</message>
<message>
<source>Boyle's law on absolute pressures; the final pressure of 0.8 of the expansion relief valve's setting after BS EN 806-2 (from memory); a charge from 0.2 bar below the reducing valve's setting to equal, and the sizes made: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>Gesetz von Boyle mit absoluten Drücken; der Enddruck von 0,8 des Ansprechdrucks des Ausdehnungs-Sicherheitsventils nach BS EN 806-2 (aus dem Gedächtnis); ein Vordruck von 0,2 bar unter der Einstellung des Druckminderers bis gleich, und die hergestellten Größen: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Gauge pressures in bar, 1 bar of atmosphere; 0 to 110 °C; the store's own stretch is left out.</source>
<extracomment>figures/worked</extracomment>
<translation>Überdrücke in bar, Luftdruck 1 bar; 0 bis 110 °C; die Dehnung des Speichers selbst ist weggelassen.</translation>
</message>
<message>
<source>share of prv</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil an prv</translation>
</message>
<message>
<source>Of the relief valve's setting</source>
<extracomment>figures/worked</extracomment>
<translation>Vom Ansprechdruck des Sicherheitsventils</translation>
</message>
<message>
<source>final</source>
<extracomment>figures/worked</extracomment>
<translation>Enddruck</translation>
</message>
<message>
<source>Highest pressure in service</source>
<extracomment>figures/worked</extracomment>
<translation>Höchster Betriebsdruck</translation>
</message>
<message>
<source>worked: share × prv</source>
<extracomment>figures/worked</extracomment>
<translation>berechnet: Anteil × prv</translation>
</message>
<message>
<source>nothing that feeds the store is drawn</source>
<extracomment>figures/worked</extracomment>
<translation>nichts, was den Speicher speist, ist gezeichnet</translation>
</message>
<message>
<source>no expansion relief valve is drawn whose setting is told; one built into a store has none here</source>
<extracomment>figures/worked</extracomment>
<translation>kein Ausdehnungs-Sicherheitsventil mit bekanntem Ansprechdruck ist gezeichnet; ein in einen Speicher eingebautes hat hier keinen</translation>
</message>
<message>
<source>Cold water</source>
<extracomment>figures/worked</extracomment>
<translation>Kaltes Wasser</translation>
</message>
<message>
<source>Store's thermostat</source>
<extracomment>figures/worked</extracomment>
<translation>Thermostat des Speichers</translation>
</message>
<message>
<source>Smallest vessel</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinstes Gefäß</translation>
</message>
<message>
<source>none serves: the fill pressure is no lower than final</source>
<extracomment>figures/worked</extracomment>
<translation>keines genügt: Der Fülldruck ist nicht niedriger als der Enddruck</translation>
</message>
<message>
<source>Charge, with no water in it</source>
<extracomment>figures/worked</extracomment>
<translation>Vordruck, ohne Wasser darin</translation>
</message>
<message>
<source>Smallest vessel, so charged</source>
<extracomment>figures/worked</extracomment>
<translation>Kleinstes Gefäß mit diesem Vordruck</translation>
</message>
<message>
<source>Next size made</source>
<extracomment>figures/worked</extracomment>
<translation>Nächste hergestellte Größe</translation>
</message>
<message>
<source>charge {vessel}</source>
<extracomment>figures/worked</extracomment>
<translation>Vordruck {vessel}</translation>
</message>
<message>
<source>volume or charge not known</source>
<extracomment>figures/worked</extracomment>
<translation>Volumen oder Vordruck nicht bekannt</translation>
</message>
<message>
<source>{name} as drawn takes up</source>
<extracomment>figures/worked</extracomment>
<translation>{name} nimmt wie gezeichnet auf</translation>
</message>
<message>
<source>To spare beyond the swell</source>
<extracomment>figures/worked</extracomment>
<translation>Reserve über die Ausdehnung hinaus</translation>
</message>
<message>
<source>{hot:g} °C instead of {hot_2:g}</source>
<extracomment>figures/worked</extracomment>
<translation>{hot:g} °C statt {hot_2:g}</translation>
</message>
<message>
<source>Swell of the heating water</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnung des Heizwassers</translation>
</message>
<message>
<source>e = ρ(t1) / ρ(t2) − 1
Ve = e × V</source>
<extracomment>figures/worked</extracomment>
<translation>e = ρ(t1) / ρ(t2) − 1
Ve = e × V</translation>
</message>
<message>
<source>G. S. Kell, J. Chem. Eng. Data 20 (1975) 97 (from memory; within 0.02 % of IAPWS-IF97). Tables differ: BS EN 12828, Annex D, prints 2.81 % to 80 °C (from memory) where the densities give 2.87 %.</source>
<extracomment>figures/worked</extracomment>
<translation>G. S. Kell, J. Chem. Eng. Data 20 (1975) 97 (aus dem Gedächtnis; auf 0,02 % genau zu IAPWS-IF97). Tabellen weichen ab: BS EN 12828, Anhang D, nennt 2,81 % bis 80 °C (aus dem Gedächtnis), wo die Dichten 2,87 % ergeben.</translation>
</message>
<message>
<source>Water without glycol, 0 to 110 °C; the swell of pipes and parts themselves is left out.</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser ohne Glykol, 0 bis 110 °C; die Dehnung der Rohre und Bauteile selbst ist weggelassen.</translation>
</message>
<message>
<source>Density when filled</source>
<extracomment>figures/worked</extracomment>
<translation>Dichte beim Füllen</translation>
</message>
<message>
<source>Density when hottest</source>
<extracomment>figures/worked</extracomment>
<translation>Dichte am heißesten</translation>
</message>
<message>
<source>Share of the content</source>
<extracomment>figures/worked</extracomment>
<translation>Anteil am Inhalt</translation>
</message>
<message>
<source>Pressure test and treatment</source>
<extracomment>figures/worked</extracomment>
<translation>Druckprobe und Wasserbehandlung</translation>
</message>
<message>
<source>test = 1.5 × pw (the other source: 1.3 × pw)
inhibitor = 0.01 × V</source>
<extracomment>figures/worked</extracomment>
<translation>Prüfdruck = 1,5 × pw (die andere Quelle: 1,3 × pw)
Inhibitor = 0,01 × V</translation>
</message>
<message>
<source>; used: the higher. Inhibitor:</source>
<extracomment>figures/worked</extracomment>
<translation>; angewandt: der höhere. Inhibitor:</translation>
</message>
<message>
<source>. BS 7593:2019: cleaned and flushed, inhibitor, a filter, the water tested every year and dosed anew or fully tested every five.</source>
<extracomment>figures/worked</extracomment>
<translation>. BS 7593:2019: gereinigt und gespült, Inhibitor, ein Filter, das Wasser jedes Jahr geprüft und alle fünf Jahre neu dosiert oder vollständig geprüft.</translation>
</message>
<message>
<source>Pipework alone, cold and full: the heat source, the safety valve, the vessel and whatever is made for less are shut off or left off during the test. As working pressure stands what the safety valves let it come to, or the height of the cistern's water.</source>
<extracomment>figures/worked</extracomment>
<translation>Nur das Rohrnetz, kalt und voll: Wärmeerzeuger, Sicherheitsventil, Ausdehnungsgefäß und alles, was weniger aushält, wird während der Probe abgesperrt oder weggelassen. Als Betriebsdruck gilt, worauf die Sicherheitsventile ihn steigen lassen, oder die Höhe des Wassers im Behälter.</translation>
</message>
<message>
<source>neither a safety valve nor a cistern tells the working pressure, and no content is known</source>
<extracomment>figures/worked</extracomment>
<translation>weder ein Sicherheitsventil noch ein Behälter nennt den Betriebsdruck, und kein Inhalt ist bekannt</translation>
</message>
<message>
<source>+{higher_by_bar:g} bar</source>
<extracomment>figures/worked</extracomment>
<translation>+{higher_by_bar:g} bar</translation>
</message>
<message>
<source>Static pressure at what heats it</source>
<extracomment>figures/worked</extracomment>
<translation>Statischer Druck an dem, was es erwärmt</translation>
</message>
<message>
<source>Test pressure (1.5 times, used)</source>
<extracomment>figures/worked</extracomment>
<translation>Prüfdruck (das 1,5-Fache, angewandt)</translation>
</message>
<message>
<source>By the other source (1.3 times)</source>
<extracomment>figures/worked</extracomment>
<translation>Nach der anderen Quelle (das 1,3-Fache)</translation>
</message>
<message>
<source>{part} is made for less and is left out</source>
<extracomment>figures/worked</extracomment>
<translation>{part} hält weniger aus und wird weggelassen</translation>
</message>
<message>
<source>Water to treat</source>
<extracomment>figures/worked</extracomment>
<translation>Zu behandelndes Wasser</translation>
</message>
<message>
<source>Inhibitor at one litre for 100</source>
<extracomment>figures/worked</extracomment>
<translation>Inhibitor, ein Liter auf 100</translation>
</message>
<message>
<source>Wait for hot water</source>
<extracomment>figures/worked</extracomment>
<translation>Wartezeit auf warmes Wasser</translation>
</message>
<message>
<source>V = sum of the contents of the pipes from what is hot to the outlet
t = V / q, q = 0.1 l/s for each loading unit, or the heat source's hot flow if that is less</source>
<extracomment>figures/worked</extracomment>
<translation>V = Summe der Inhalte der Rohre vom Warmen bis zur Zapfstelle
t = V / q, q = 0,1 l/s je Belastungswert oder der Warmwasser-Volumenstrom des Wärmeerzeugers, wenn dieser kleiner ist</translation>
</message>
<message>
<source>. Sources disagree on the limit: 30 s by the WFR guidance, G18.4; a minute by HSG274 part 2 and BS 8558.</source>
<extracomment>figures/worked</extracomment>
<translation>. Die Quellen sind über die Grenze uneins: 30 s nach WFR-Richtlinie G18.4; eine Minute nach HSG274 Teil 2 und BS 8558.</translation>
</message>
<message>
<source>The outlet wide open, the pipe cold and full; insulation keeps it warm for a while only. The tube's own metal and the mixing on the way add to it (some 10 to 20 % in copper), and a heat source that heats water on its way needs seconds to start. A blending valve draws from its hot side alone until that is hot.</source>
<extracomment>figures/worked</extracomment>
<translation>Die Zapfstelle ganz offen, das Rohr kalt und voll; Dämmung hält es nur eine Weile warm. Das Metall des Rohrs und die Mischung unterwegs kommen hinzu (bei Kupfer etwa 10 bis 20 %), und ein Wärmeerzeuger mit Durchlauf braucht Sekunden zum Anlaufen. Ein Mischventil zieht nur von der Warmseite, bis diese warm ist.</translation>
</message>
<message>
<source>Its hot flow is 0.</source>
<extracomment>figures/worked</extracomment>
<translation>Sein Warmwasser-Volumenstrom ist 0.</translation>
</message>
<message>
<source>Pipe that goes cold</source>
<extracomment>figures/worked</extracomment>
<translation>Rohr, das auskühlt</translation>
</message>
<message>
<source>Wait</source>
<extracomment>figures/worked</extracomment>
<translation>Wartezeit</translation>
</message>
<message>
<source>Limit by the WFR guidance, G18.4</source>
<extracomment>figures/worked</extracomment>
<translation>Grenze nach WFR-Richtlinie G18.4</translation>
</message>
<message>
<source>Limit by HSG274 part 2 and BS 8558</source>
<extracomment>figures/worked</extracomment>
<translation>Grenze nach HSG274 Teil 2 und BS 8558</translation>
</message>
<message>
<source>V = Σ Vpart + Σ π/4 × d² × L</source>
<extracomment>figures/worked</extracomment>
<translation>V = Σ V Bauteile + Σ π/4 × d² × L</translation>
</message>
<message>
<source>Geometry; bores by BS EN 1057 (copper, R250) and BS EN 10255 (steel, medium) where the drawing states none. That valves, pumps, tees, plate exchangers, vessels and cisterns are left out: common practice, no source.</source>
<extracomment>figures/worked</extracomment>
<translation>Geometrie; Innendurchmesser nach BS EN 1057 (Kupfer, R250) und BS EN 10255 (Stahl, mittelschwer), wo die Zeichnung keine nennt. Dass Ventile, Pumpen, T-Stücke, Plattenwärmeübertrager, Ausdehnungsgefäße und Behälter wegbleiben: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Pipes full of water; standard tube of the tabled sizes, else with its bore stated.</source>
<extracomment>figures/worked</extracomment>
<translation>Rohre voll Wasser; genormtes Rohr der tabellierten Größen, sonst mit angegebenem Innendurchmesser.</translation>
</message>
<message>
<source>System content as the design states it</source>
<extracomment>figures/worked</extracomment>
<translation>Anlageninhalt, wie die Auslegung ihn nennt</translation>
</message>
<message>
<source>Water content, as stated</source>
<extracomment>figures/worked</extracomment>
<translation>Wasserinhalt, wie angegeben</translation>
</message>
<message>
<source>Of that, known part by part</source>
<extracomment>figures/worked</extracomment>
<translation>Davon Bauteil für Bauteil bekannt</translation>
</message>
<message>
<source>V = as the design states; it wins over the sum of the parts</source>
<extracomment>figures/worked</extracomment>
<translation>V = wie die Auslegung angibt; das geht der Summe der Teile vor</translation>
</message>
<message>
<source>What is known so far: at least</source>
<extracomment>figures/worked</extracomment>
<translation>Was bisher bekannt ist: mindestens</translation>
</message>
<message>
<source>Of that, in pipes</source>
<extracomment>figures/worked</extracomment>
<translation>Davon in Rohren</translation>
</message>
<message>
<source>Of that, in parts</source>
<extracomment>figures/worked</extracomment>
<translation>Davon in Bauteilen</translation>
</message>
<message>
<source>{pipe}: {length:.4g} m of {size:g} mm {material}, bore {bore:g} mm</source>
<extracomment>figures/worked</extracomment>
<translation>{pipe}: {length:.4g} m {material} {size:g} mm, Innendurchmesser {bore:g} mm</translation>
</message>
<message>
<source>{pipe}: {length:.4g} m of {material}, bore {bore:g} mm</source>
<extracomment>figures/worked</extracomment>
<translation>{pipe}: {length:.4g} m {material}, Innendurchmesser {bore:g} mm</translation>
</message>
<message>
<source>; given</source>
<extracomment>figures/worked</extracomment>
<translation>; angegeben</translation>
</message>
<message>
<source>table EN 10255</source>
<extracomment>figures/worked</extracomment>
<translation>Tabelle EN 10255</translation>
</message>
<message>
<source>table EN 1057</source>
<extracomment>figures/worked</extracomment>
<translation>Tabelle EN 1057</translation>
</message>
<message>
<source>Properties of the water</source>
<extracomment>figures/worked</extracomment>
<translation>Stoffwerte des Wassers</translation>
</message>
<message>
<source>ρ: Kell's quotient of polynomials
μ: IAPWS SR6-08(2011), equation 8
c: table ten degrees apart
e = ρ(fill) / ρ(t) − 1</source>
<extracomment>figures/worked</extracomment>
<translation>ρ: Polynomquotient von Kell
μ: IAPWS SR6-08(2011), Gleichung 8
c: Tabelle in Zehnerschritten
e = ρ(Füllung) / ρ(t) − 1</translation>
</message>
<message>
<source>Density: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97; viscosity: IAPWS SR6-08(2011); heat capacity: IAPWS-IF97 at 0.1 MPa (coefficients from memory; within 0.02 %, 1 % and 0.2 % of the IAPWS formulations).</source>
<extracomment>figures/worked</extracomment>
<translation>Dichte: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97; Viskosität: IAPWS SR6-08(2011); Wärmekapazität: IAPWS-IF97 bei 0,1 MPa (Beiwerte aus dem Gedächtnis; auf 0,02 %, 1 % und 0,2 % genau zu den IAPWS-Formulierungen).</translation>
</message>
<message>
<source>Water without glycol, liquid, 0 to 110 °C; up to 3 bar of pressure change its density by less than 0.02 %.</source>
<extracomment>figures/worked</extracomment>
<translation>Wasser ohne Glykol, flüssig, 0 bis 110 °C; bis zu 3 bar Druck ändern die Dichte um weniger als 0,02 %.</translation>
</message>
<message>
<source>t fill</source>
<extracomment>figures/worked</extracomment>
<translation>t Füllung</translation>
</message>
<message>
<source>Fill temperature</source>
<extracomment>figures/worked</extracomment>
<translation>Fülltemperatur</translation>
</message>
<message>
<source>t return</source>
<extracomment>figures/worked</extracomment>
<translation>t Rücklauf</translation>
</message>
<message>
<source>Return temperature</source>
<extracomment>figures/worked</extracomment>
<translation>Rücklauftemperatur</translation>
</message>
<message>
<source>t flow</source>
<extracomment>figures/worked</extracomment>
<translation>t Vorlauf</translation>
</message>
<message>
<source>Flow temperature</source>
<extracomment>figures/worked</extracomment>
<translation>Vorlauftemperatur</translation>
</message>
<message>
<source>glycol</source>
<extracomment>figures/worked</extracomment>
<translation>Glykol</translation>
</message>
<message>
<source>Glycol by volume</source>
<extracomment>figures/worked</extracomment>
<translation>Glykol nach Volumen</translation>
</message>
<message>
<source>{what} is outside the {least_c:g} to {most_c:g} °C it holds for</source>
<extracomment>figures/worked</extracomment>
<translation>{what} liegt außerhalb von {least_c:g} bis {most_c:g} °C, für die es gilt</translation>
</message>
<message>
<source>any glycol</source>
<extracomment>figures/worked</extracomment>
<translation>beliebiges Glykol</translation>
</message>
<message>
<source>at {at_c:g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>bei {at_c:g} °C</translation>
</message>
<message>
<source>Density {place}</source>
<extracomment>figures/worked</extracomment>
<translation>Dichte {place}</translation>
</message>
<message>
<source>Heat capacity {place}</source>
<extracomment>figures/worked</extracomment>
<translation>Wärmekapazität {place}</translation>
</message>
<message>
<source>kJ/(kg K)</source>
<extracomment>figures/worked</extracomment>
<translation>kJ/(kg K)</translation>
</message>
<message>
<source>Viscosity {place}</source>
<extracomment>figures/worked</extracomment>
<translation>Viskosität {place}</translation>
</message>
<message>
<source>mPa s</source>
<extracomment>figures/worked</extracomment>
<translation>mPa s</translation>
</message>
<message>
<source>Swell from fill {place}</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnung ab Füllung {place}</translation>
</message>
<message>
<source>{from_c:g} to {to_c:g} °C</source>
<extracomment>figures/worked</extracomment>
<translation>{from_c:g} bis {to_c:g} °C</translation>
</message>
<message>
<source>{percent:g} % {glycol}, swell {between}</source>
<extracomment>figures/worked</extracomment>
<translation>{percent:g} % {glycol}, Ausdehnung {between}</translation>
</message>
<message>
<source>That is, times the swell of water</source>
<extracomment>figures/worked</extracomment>
<translation>Das ist, mal der Ausdehnung von Wasser</translation>
</message>
<message>
<source>freezing point</source>
<extracomment>figures/worked</extracomment>
<translation>Gefrierpunkt</translation>
</message>
<message>
<source>{percent:g} %, if propylene glycol, freezes at</source>
<extracomment>figures/worked</extracomment>
<translation>{percent:g} %, falls Propylenglykol, gefriert bei</translation>
</message>
<message>
<source>Published: {what}</source>
<extracomment>figures/worked</extracomment>
<translation>Veröffentlicht: {what}</translation>
</message>
<message>
<source>see results</source>
<extracomment>figures/worked</extracomment>
<translation>siehe Ergebnisse</translation>
</message>
<message>
<source>numbers are missing</source>
<extracomment>figures</extracomment>
<translation>Angaben fehlen</translation>
</message>
<message>
<source>half as much again</source>
<extracomment>figures</extracomment>
<translation>noch einmal halb so viel</translation>
</message>
<message>
<source>Highest temperature</source>
<extracomment>figures</extracomment>
<translation>Höchste Temperatur</translation>
</message>
<message>
<source>the temperatures are outside the {least_c:g} to {most_c:g} °C for which the formulas hold</source>
<extracomment>figures</extracomment>
<translation>die Temperaturen liegen außerhalb von {least_c:g} bis {most_c:g} °C, für die die Formeln gelten</translation>
</message>
<message>
<source>no flow</source>
<extracomment>figures/worked</extracomment>
<translation>kein Durchfluss</translation>
</message>
<message>
<source>laminar</source>
<extracomment>figures/worked</extracomment>
<translation>laminar</translation>
</message>
<message>
<source>between laminar and turbulent</source>
<extracomment>figures/worked</extracomment>
<translation>zwischen laminar und turbulent</translation>
</message>
<message>
<source>Colebrook-White</source>
<extracomment>figures/worked</extracomment>
<translation>Colebrook-White</translation>
</message>
<message>
<source>What each emitter's and coil's valve has to take up so that all get their design flow, as a kv to set, and what pressure stands across thermostatic heads, at design and when all of them have shut. What is not balanced starves the far rooms; a head under too much pressure whistles.</source>
<extracomment>figures/about</extracomment>
<translation>Was das Ventil jeder Heizfläche und Heizschlange aufnehmen muss, damit alle ihren Auslegungsvolumenstrom bekommen, als einzustellender Kv-Wert, und welcher Druck an Thermostatköpfen liegt, bei Auslegung und wenn alle geschlossen haben. Was nicht abgeglichen ist, lässt die entfernten Räume darben; ein Kopf unter zu viel Druck pfeift.</translation>
</message>
<message>
<source>Between which set differences a bypass stays shut while heat or hot water is called, and yet opens far enough at pump run-on that the heat source keeps its least flow; or that no setting does both. Then the pump is too large, or the pipes behind it lose too much.</source>
<extracomment>figures/about</extracomment>
<translation>Zwischen welchen Druckdifferenzen ein Überströmventil zu bleibt, während Heizung oder Warmwasser gefordert ist, und doch beim Pumpennachlauf weit genug öffnet, dass der Wärmeerzeuger seinen Mindestvolumenstrom behält; oder dass keine Einstellung beides leistet. Dann ist die Pumpe zu groß, oder die Rohre dahinter verlieren zu viel.</translation>
</message>
<message>
<source>The water of an open-vented circuit swells into its cistern. A cistern that is filled to the brim when cold runs over every time the circuit is heated, and draws fresh water, with fresh air and lime in it, every time it cools. Sources disagree on how much it is: 4 % of the circuit's water by most, 5 % by others; what water really does from cold to hot stands beside them.</source>
<extracomment>figures/about</extracomment>
<translation>Das Wasser eines offenen Kreises dehnt sich in seinen Vorlagebehälter aus. Ein kalt randvoll gefüllter Behälter läuft bei jedem Aufheizen über und zieht bei jedem Abkühlen frisches Wasser nach, mit frischer Luft und Kalk darin. Über die Menge sind die Quellen uneins: 4 % des Kreiswassers nach den meisten, 5 % nach anderen; was Wasser von kalt bis heiß wirklich tut, steht daneben.</translation>
</message>
<message>
<source>The size that a store's relief valve asks of its discharge pipe after the tundish (D2), how much longer it may be with the bends it has, what the pipe before the tundish (D1) must be, and how far it must fall. A pipe too small or too long backs near-boiling water up out of the tundish, indoors.</source>
<extracomment>figures/about</extracomment>
<translation>Die Größe, die das Sicherheitsventil eines Speichers von seiner Abblaseleitung nach dem Ablauftrichter verlangt (D2), wie viel länger sie mit ihren Bögen sein darf, wie das Rohr vor dem Ablauftrichter (D1) sein muss und wie stark es fallen muss. Ein zu kleines oder zu langes Rohr staut fast siedendes Wasser aus dem Ablauftrichter zurück, und zwar im Haus.</translation>
</message>
<message>
<source>A store is empty of hot water sooner at a bath than at a basin. Told for each outlet alone, at its full flow mixed to 40 °C, from a full store that nothing heats meanwhile; and beside it what the heating sustains without end, for the shower that goes on after the store is spent.</source>
<extracomment>figures/about</extracomment>
<translation>An der Badewanne ist ein Speicher schneller leer als am Waschtisch. Für jede Zapfstelle einzeln angegeben, bei vollem Volumenstrom, gemischt auf 40 °C, aus einem vollen Speicher, den inzwischen nichts heizt; daneben, was die Heizung auf Dauer leistet, für die Dusche, die weiterläuft, wenn der Speicher leer ist.</translation>
</message>
<message>
<source>A radiator's output is told for water that is 50 K above the room on the mean. Run it cooler, as an efficient heat source likes it, and it gives much less: at 30 K little more than half. An emitter that was just large enough at 75 °C leaves the room cold at 55.</source>
<extracomment>figures/about</extracomment>
<translation>Die Leistung eines Heizkörpers gilt für Wasser, das im Mittel 50 K wärmer ist als der Raum. Kühler betrieben, wie es ein sparsamer Wärmeerzeuger mag, gibt er viel weniger ab: bei 30 K kaum mehr als die Hälfte. Eine Heizfläche, die bei 75 °C gerade reichte, lässt den Raum bei 55 °C kalt.</translation>
</message>
<message>
<source>Water weighs a kilogram a litre: a filled store is as heavy as three or four people standing on one spot. The figure is always advice: it knows nothing of joists, spans and what else stands there, and the structure must be confirmed by a competent person whatever it says.</source>
<extracomment>figures/about</extracomment>
<translation>Ein Liter Wasser wiegt ein Kilogramm: Ein gefüllter Speicher ist so schwer wie drei oder vier Menschen auf einem Fleck. Die Berechnung ist immer nur eine Empfehlung: Sie weiß nichts von Balken, Spannweiten und dem, was sonst dort steht, und das Tragwerk muss in jedem Fall ein Fachkundiger bestätigen.</translation>
</message>
<message>
<source>What flows through each heat source, pump, emitter, coil and bypass in every situation in which a pump runs, and where the water runs fastest. Everything else about a pumped circuit follows from these.</source>
<extracomment>figures/about</extracomment>
<translation>Was in jedem Betriebszustand, in dem eine Pumpe läuft, durch jeden Wärmeerzeuger, jede Pumpe, Heizfläche, Heizschlange und jedes Überströmventil fließt, und wo das Wasser am schnellsten fließt. Alles andere an einem Pumpenkreis folgt daraus.</translation>
</message>
<message>
<source>What the heat source gives must be enough for the emitters and, where hot water does not come first, for the coil beside them. Much more than both is no good either: it starts and stops all day. A coil that takes less than the heat source gives makes it do the same whenever only the store calls.</source>
<extracomment>figures/about</extracomment>
<translation>Was der Wärmeerzeuger gibt, muss für die Heizflächen reichen und, wo Warmwasser keinen Vorrang hat, auch für die Heizschlange daneben. Viel mehr als beides taugt auch nicht: Dann schaltet er den ganzen Tag ein und aus. Eine Heizschlange, die weniger nimmt, als der Wärmeerzeuger gibt, bewirkt dasselbe, wann immer nur der Speicher Wärme fordert.</translation>
</message>
<message>
<source>The smallest vessel that takes up the swell and still holds a reserve when all is cold, the charge it must have, and between what pressures a vessel that is drawn may be filled cold. Too small a vessel makes the safety valve weep at every heating-up; charged too high it leaves the top radiators short of water.</source>
<extracomment>figures/about</extracomment>
<translation>Das kleinste Gefäß, das die Ausdehnung aufnimmt und kalt noch eine Wasservorlage hat, sein nötiger Vordruck und zwischen welchen Drücken ein gezeichnetes Gefäß kalt gefüllt werden darf. Ein zu kleines Gefäß lässt das Sicherheitsventil bei jedem Aufheizen tropfen; mit zu hohem Vordruck fehlt den obersten Heizkörpern Wasser.</translation>
</message>
<message>
<source>Index circuit of each pump</source>
<extracomment>figures/about</extracomment>
<translation>Ungünstigster Kreis jeder Pumpe</translation>
</message>
<message>
<source>The circuit that decides what head a pump must have: of all ways round through what it serves, the one that loses most at design flows, its losses one by one. Widening anything else gains nothing.</source>
<extracomment>figures/about</extracomment>
<translation>Der Kreis, der bestimmt, welche Förderhöhe eine Pumpe haben muss: von allen Umläufen durch das, was an ihr hängt, der mit dem größten Verlust bei Auslegungsvolumenströmen, Verlust für Verlust. Anderes zu erweitern bringt nichts.</translation>
</message>
<message>
<source>A heat source that heats water on its way stores none: it gives as much as its output heats, and no more, for as long as one likes. One shower may be all of it. Compared here with what the outlets it feeds draw by their loading units.</source>
<extracomment>figures/about</extracomment>
<translation>Ein Wärmeerzeuger mit Durchlauf speichert nichts: Er gibt so viel, wie seine Leistung erwärmt, und nicht mehr, solange man will. Eine Dusche kann schon alles sein. Hier verglichen mit dem, was die angeschlossenen Zapfstellen nach ihren Belastungswerten zapfen.</translation>
</message>
<message>
<source>Content that always circulates, against what the heat source needs</source>
<extracomment>figures/about</extracomment>
<translation>Immer umlaufender Inhalt gegenüber dem, was der Wärmeerzeuger braucht</translation>
</message>
<message>
<source>A heat source that cannot turn its heat down far enough needs some litres going round through it whenever it runs, or it starts and stops all day. What thermostatic heads and motor valves can shut off does not count: it is just then that the rest is too little.</source>
<extracomment>figures/about</extracomment>
<translation>Ein Wärmeerzeuger, der seine Leistung nicht weit genug senken kann, braucht im Betrieb immer einige Liter im Umlauf, sonst schaltet er den ganzen Tag ein und aus. Was Thermostatköpfe und Motorventile absperren können, zählt nicht: Gerade dann ist der Rest zu wenig.</translation>
</message>
<message>
<source>A mains-fed store gives no more than the main does, and every outlet pulls on it. The outlets' loading units are added and turned into the flow that is to be expected, since not all are open at once; that is set against the flow and the running pressure measured at the main. Have them measured before a store is ordered.</source>
<extracomment>figures/about</extracomment>
<translation>Ein geschlossener Speicher gibt nicht mehr als der Hausanschluss, und jede Zapfstelle zieht daran. Die Belastungswerte der Zapfstellen werden addiert und in den zu erwartenden Volumenstrom umgerechnet, da nie alle zugleich offen sind; dieser wird mit dem am Hausanschluss gemessenen Volumenstrom und Fließdruck verglichen. Lassen Sie beide messen, bevor ein Speicher bestellt wird.</translation>
</message>
<message>
<source>Nobody washes in water of 60 °C: it is mixed down to about 40. How many litres of that a full store gives is what tells whether it is large enough; at the same volume a hotter store gives more. Storing cooler to save heat has an end: legionella grows from 20 to 45 °C and is killed from 60 on.</source>
<extracomment>figures/about</extracomment>
<translation>Niemand wäscht sich mit Wasser von 60 °C: Es wird auf etwa 40 °C gemischt. Wie viele Liter davon ein voller Speicher gibt, sagt, ob er groß genug ist; bei gleichem Volumen gibt ein heißerer mehr. Kühler zu speichern, um Wärme zu sparen, hat eine Grenze: Legionellen wachsen von 20 bis 45 °C und sterben ab 60 °C.</translation>
</message>
<message>
<source>The highest velocity that each pipe sees in any situation, with the limit above which it is heard, and how wide a pipe would have to be that is too narrow.</source>
<extracomment>figures/about</extracomment>
<translation>Die höchste Geschwindigkeit, die jedes Rohr in irgendeinem Betriebszustand erlebt, mit der Grenze, über der man sie hört, und wie weit ein zu enges Rohr sein müsste.</translation>
</message>
<message>
<source>Where everything else fails, steam leaves by the open vent. It must be wide enough, and end high enough above the cistern's water: hot water stands higher in it than cold, and a pump that pushes on it lifts the water by as many metres as its head. A vent that is too low pours hot water into the cistern all day.</source>
<extracomment>figures/about</extracomment>
<translation>Wenn alles andere versagt, entweicht Dampf durch die offene Entlüftung. Sie muss weit genug sein und hoch genug über dem Wasserspiegel des Behälters enden: Heißes Wasser steht in ihr höher als kaltes, und eine Pumpe, die auf sie drückt, hebt das Wasser um so viele Meter wie ihre Förderhöhe. Eine zu niedrige Entlüftung gießt den ganzen Tag heißes Wasser in den Behälter.</translation>
</message>
<message>
<source>How fast the pressure rises while a heat source heats and nothing takes its heat away: with the vessel as drawn, with the vessel full of water, and with the heat source's own water shut in by valves. The first is a matter of minutes, the last of seconds: why no valve may ever part a heat source from its safety valve.</source>
<extracomment>figures/about</extracomment>
<translation>Wie schnell der Druck steigt, während ein Wärmeerzeuger heizt und nichts die Wärme abführt: mit dem Ausdehnungsgefäß wie gezeichnet, mit dem Gefäß voll Wasser und mit dem Wasser des Wärmeerzeugers von Ventilen eingeschlossen. Das Erste dauert Minuten, das Letzte Sekunden: Darum darf kein Ventil je einen Wärmeerzeuger von seinem Sicherheitsventil trennen.</translation>
</message>
<message>
<source>The lowest and the highest pressure at every part of the heating water whose height is known, over all situations, cold and hot: where it may draw in air, where hot water comes nearest to boiling, whether any part sees more than it is made for, and what each gauge should read.</source>
<extracomment>figures/about</extracomment>
<translation>Der niedrigste und der höchste Druck an jedem Bauteil des Heizwassers, dessen Höhe bekannt ist, über alle Betriebszustände, kalt und heiß: wo Luft angesaugt werden kann, wo heißes Wasser dem Sieden am nächsten kommt, ob ein Bauteil mehr ausgesetzt ist, als es aushält, und was jedes Manometer zeigen soll.</translation>
</message>
<message>
<source>Duty of each pump</source>
<extracomment>figures/about</extracomment>
<translation>Betriebspunkt jeder Pumpe</translation>
</message>
<message>
<source>At which flow and head each pump works in every situation, and what is needed of it there: the flow of all that it serves at its design, and the head that the circuit which decides loses at those flows. A pump that has too little leaves the far rooms cool; one that has far too much hisses, and costs money every hour.</source>
<extracomment>figures/about</extracomment>
<translation>Bei welchem Volumenstrom und welcher Förderhöhe jede Pumpe in jedem Betriebszustand arbeitet und was dort von ihr verlangt ist: der Volumenstrom von allem, was an ihr hängt, bei seiner Auslegung, und die Förderhöhe, die der maßgebende Kreis dabei verliert. Eine Pumpe, der es fehlt, lässt die entfernten Räume kühl; eine mit viel zu viel rauscht und kostet jede Stunde Geld.</translation>
</message>
<message>
<source>Whether the safety valves of a sealed circuit can blow off all the heat that its heat sources give at full output. When every control has failed, all of it leaves as steam through them; what they cannot pass goes on raising the pressure.</source>
<extracomment>figures/about</extracomment>
<translation>Ob die Sicherheitsventile eines geschlossenen Kreises die ganze Wärme abblasen können, die seine Wärmeerzeuger bei voller Leistung geben. Hat jede Regelung versagt, geht alles als Dampf durch sie hinaus; was sie nicht durchlassen, erhöht den Druck immer weiter.</translation>
</message>
<message>
<source>Hot water that goes round all day is at the tap at once, and heats the house in summer all day as well. What the round loses must be made up by the heat source; how much flows must keep it warm to its end; and its water swells with the store's, so that beyond some litres the vessel must be larger.</source>
<extracomment>figures/about</extracomment>
<translation>Warmwasser, das den ganzen Tag zirkuliert, ist sofort am Hahn und heizt auch im Sommer den ganzen Tag das Haus. Was der Umlauf verliert, muss der Wärmeerzeuger ersetzen; so viel muss fließen, damit er bis zum Ende warm bleibt; und sein Wasser dehnt sich mit dem des Speichers aus, sodass ab einigen Litern das Gefäß größer sein muss.</translation>
</message>
<message>
<source>When the zones have shut and the pump runs on, what still flows through each heat source, and whether it is the least flow that it needs to give up its heat. Too little, and the water left in it boils.</source>
<extracomment>figures/about</extracomment>
<translation>Was noch durch jeden Wärmeerzeuger fließt, wenn die Heizkreise geschlossen haben und die Pumpe nachläuft, und ob es der Mindestvolumenstrom ist, den er braucht, um seine Wärme abzugeben. Ist es zu wenig, siedet das Wasser, das darin bleibt.</translation>
</message>
<message>
<source>A hot store loses heat day and night, used or not. Insulation decides how much; the drawing does not tell how thick it is, so the figure is told for the thicknesses there are. Against its own label, the label goes before.</source>
<extracomment>figures/about</extracomment>
<translation>Ein warmer Speicher verliert Tag und Nacht Wärme, benutzt oder nicht. Wie viel, bestimmt die Dämmung; wie dick sie ist, sagt die Zeichnung nicht, also steht der Wert für die Dicken da, die es gibt. Sein eigenes Typenschild geht vor.</translation>
</message>
<message>
<source>What the height of the water alone presses with, what pressure is left at the top when the circuit is cold, and what each gauge should then read. A top without pressure draws in air; a gauge that reads something else than this, cold, has found a fault.</source>
<extracomment>figures/about</extracomment>
<translation>Womit allein die Höhe des Wassers drückt, welcher Druck oben bleibt, wenn der Kreis kalt ist, und was jedes Manometer dann zeigen soll. Oben ohne Druck wird Luft angesaugt; ein Manometer, das kalt etwas anderes zeigt, hat einen Fehler gefunden.</translation>
</message>
<message>
<source>How long a store takes from cold, and to make up for 70 % drawn off: the household waits so long for the next bath. Two limits apply at once: the heat source gives no more than its output, and the coil passes on no more than its power; the smaller counts, and buying more of the other changes nothing.</source>
<extracomment>figures/about</extracomment>
<translation>Wie lange ein Speicher von kalt an braucht und um 70 % Entnahme zu ersetzen: So lange wartet der Haushalt auf das nächste Bad. Zwei Grenzen gelten zugleich: Der Wärmeerzeuger gibt nicht mehr als seine Leistung, und die Heizschlange überträgt nicht mehr als die ihre; die kleinere zählt, und mehr vom anderen zu kaufen ändert nichts.</translation>
</message>
<message>
<source>V = swell / ((charge + 1) / (fill + 1) - (charge + 1) / (final + 1))</source>
<extracomment>figures/worked</extracomment>
<translation>V = Ausdehnung / ((Vordruck + 1) / (Fülldruck + 1) - (Vordruck + 1) / (Enddruck + 1))</translation>
</message>
<message>
<source>swell = C × (ρ(t1) / ρ(t2) − 1)
final = share × prv
V = swell / ((charge + 1) / (fill + 1) - (charge + 1) / (final + 1))
a vessel as drawn takes V × ((charge + 1) / (fill + 1) − (charge + 1) / (final + 1))</source>
<extracomment>figures/worked</extracomment>
<translation>Ausdehnung = C × (ρ(t1) / ρ(t2) − 1)
Enddruck = Anteil × prv
V = Ausdehnung / ((Vordruck + 1) / (Fülldruck + 1) - (Vordruck + 1) / (Enddruck + 1))
ein Gefäß wie gezeichnet nimmt auf: V × ((Vordruck + 1) / (Fülldruck + 1) − (Vordruck + 1) / (Enddruck + 1))</translation>
</message>
<message>
<source>Expansion vessel of a mains-fed store</source>
<extracomment>figures/about</extracomment>
<translation>Ausdehnungsgefäß eines geschlossenen Speichers</translation>
</message>
<message>
<source>How large a vessel takes up the swell of a store's water between the reducing valve's pressure and the pressure at which the expansion relief valve would begin to weep. The check valve on the cold feed keeps the swell from going back into the main, so that it must find room here.</source>
<extracomment>figures/about</extracomment>
<translation>Wie groß ein Gefäß sein muss, das die Ausdehnung des Speicherwassers zwischen dem Druck des Druckminderers und dem Druck aufnimmt, bei dem das Ausdehnungs-Sicherheitsventil zu tropfen begänne. Der Rückflussverhinderer im Kaltwasserzulauf hält die Ausdehnung vom Hausanschluss ab, also muss sie hier Raum finden.</translation>
</message>
<message>
<source>By how many litres the water of a circuit grows from being filled cold to its highest temperature. Water cannot be squeezed: the expansion vessel, or the feed cistern of an open circuit, must find room for it.</source>
<extracomment>figures/about</extracomment>
<translation>Um wie viele Liter das Wasser eines Kreises wächst, vom kalten Füllen bis zur höchsten Temperatur. Wasser lässt sich nicht zusammendrücken: Das Ausdehnungsgefäß, oder der Vorlagebehälter eines offenen Kreises, muss Raum dafür haben.</translation>
</message>
<message>
<source>Test: BS 5449 as taught in trade textbooks: 1.5 times the normal working pressure, after 30 minutes to settle; BS EN 14336 (from memory): at least 1.3 times; used: the higher. Inhibitor: common practice, no source: a litre for each 100 litres; the supplier's dose comes first. BS 7593:2019: cleaned and flushed, inhibitor, a filter, the water tested every year and dosed anew or fully tested every five.</source>
<extracomment>figures/worked</extracomment>
<translation>Probe: BS 5449 wie in Fachbüchern gelehrt: das 1,5-Fache des üblichen Betriebsdrucks, nach 30 Minuten Ruhe; BS EN 14336 (aus dem Gedächtnis): mindestens das 1,3-Fache; angewandt: der höhere. Inhibitor: übliche Praxis, ohne Quelle: ein Liter je 100 Liter; die Dosierung des Lieferanten geht vor. BS 7593:2019: gereinigt und gespült, Inhibitor, ein Filter, das Wasser jedes Jahr geprüft und alle fünf Jahre neu dosiert oder vollständig geprüft.</translation>
</message>
<message>
<source>Pressure test and treatment of the heating water</source>
<extracomment>figures/about</extracomment>
<translation>Druckprobe und Behandlung des Heizwassers</translation>
</message>
<message>
<source>At what pressure the pipework is tested before it is hidden, and how much water there is to treat. The sources disagree on the test; both are shown, and which one is used. Treated water keeps radiators from rusting from inside and the heat source from furring up.</source>
<extracomment>figures/about</extracomment>
<translation>Mit welchem Druck das Rohrnetz geprüft wird, bevor es verdeckt ist, und wie viel Wasser zu behandeln ist. Über die Probe sind die Quellen uneins; beide stehen da, und welche angewandt ist. Behandeltes Wasser bewahrt Heizkörper davor, von innen zu rosten, und den Wärmeerzeuger davor, zu verkalken.</translation>
</message>
<message>
<source>The water in the pipe has gone cold since the tap was last open, and must run out first: down the drain, with the heat that went into it. A long or wide pipe to a small tap waits longest. What is right is told differently by different sources: within 30 seconds by the guidance to the water regulations, within a minute by the health authority and BS 8558.</source>
<extracomment>figures/about</extracomment>
<translation>Das Wasser im Rohr ist kalt geworden, seit der Hahn zuletzt offen war, und muss erst ablaufen: in den Abfluss, samt der Wärme darin. Ein langes oder weites Rohr zu einem kleinen Hahn wartet am längsten. Was richtig ist, sagen die Quellen verschieden: binnen 30 Sekunden die Richtlinie zu den Wasservorschriften, binnen einer Minute die Gesundheitsbehörde und BS 8558.</translation>
</message>
<message>
<source>How much water each body of heating water holds, part by part. The vessel, the inhibitor, the filling and the heat source's least content all begin with it. What is not known is named, never guessed.</source>
<extracomment>figures/about</extracomment>
<translation>Wie viel Wasser jedes Heizwasser enthält, Bauteil für Bauteil. Ausdehnungsgefäß, Inhibitor, Füllen und Mindestinhalt des Wärmeerzeugers beginnen alle damit. Was nicht bekannt ist, wird genannt und nie geschätzt.</translation>
</message>
<message>
<source>Lange's Handbook of Chemistry, Table 5.13: propylene glycol by volume</source>
<extracomment>figures/worked</extracomment>
<translation>Lange’s Handbook of Chemistry, Tabelle 5.13: Propylenglykol nach Volumen</translation>
</message>
<message>
<source>the water holds glycol, and what is published here is a few points of 30 % by volume, and the drawing does not say which glycol; ask its supplier for density, heat capacity, viscosity and swell</source>
<extracomment>figures/worked</extracomment>
<translation>das Wasser enthält Glykol; veröffentlicht sind hier nur einige Punkte für 30 % nach Volumen, und die Zeichnung sagt nicht, welches Glykol es ist; fragen Sie den Lieferanten nach Dichte, Wärmekapazität, Viskosität und Ausdehnung</translation>
</message>
<message>
<source>Density, heat capacity, viscosity and swell of the water at the temperatures of the design. Flows, pressure drops, vessels and heat-up times all rest on them.</source>
<extracomment>figures/about</extracomment>
<translation>Dichte, Wärmekapazität, Viskosität und Ausdehnung des Wassers bei den Auslegungstemperaturen. Volumenströme, Druckverluste, Ausdehnungsgefäße und Aufheizzeiten beruhen alle darauf.</translation>
</message>
<message>
<source>Two zone valves</source>
<extracomment>arrangements</extracomment>
<translation>Zwei Zonenventile</translation>
</message>
<message>
<source>Sealed heating with one zone valve for the rooms and one for a mains-fed store, and an automatic bypass.</source>
<extracomment>arrangements</extracomment>
<translation>Geschlossene Heizung mit einem Zonenventil für die Räume und einem für einen geschlossenen Speicher, dazu ein automatisches Überströmventil.</translation>
</message>
<message>
<source>Mains-fed store</source>
<extracomment>arrangements</extracomment>
<translation>Speicher am Hausanschluss</translation>
</message>
<message>
<source>Built-in devices</source>
<extracomment>arrangements</extracomment>
<translation>Eingebaute Einrichtungen</translation>
</message>
<message>
<source>Pump, vessel, safety valve, bypass and gauge are inside the heat source; a mains-fed store with a zone valve.</source>
<extracomment>arrangements</extracomment>
<translation>Pumpe, Ausdehnungsgefäß, Sicherheitsventil, Überströmventil und Manometer sitzen im Wärmeerzeuger; ein geschlossener Speicher mit Zonenventil.</translation>
</message>
<message>
<source>Secondary return</source>
<extracomment>arrangements</extracomment>
<translation>Zirkulation</translation>
</message>
<message>
<source>A mains-fed store whose hot water goes round by a pump, so that it is hot at the tap at once.</source>
<extracomment>arrangements</extracomment>
<translation>Ein geschlossener Speicher, dessen Warmwasser eine Pumpe umwälzt, sodass es sofort warm am Hahn ist.</translation>
</message>
<message>
<source>Separator with several pumps</source>
<extracomment>arrangements</extracomment>
<translation>Weiche mit mehreren Pumpen</translation>
</message>
<message>
<source>Behind a separator each circuit has its own pump; a mains-fed store with an inlet group.</source>
<extracomment>arrangements</extracomment>
<translation>Hinter einer hydraulischen Weiche hat jeder Kreis seine eigene Pumpe; ein geschlossener Speicher mit Sicherheitsgruppe.</translation>
</message>
<message>
<source>Two heat sources</source>
<extracomment>arrangements</extracomment>
<translation>Zwei Wärmeerzeuger</translation>
</message>
<message>
<source>Two heat sources side by side before a separator, several pumped circuits and a secondary return.</source>
<extracomment>arrangements</extracomment>
<translation>Zwei Wärmeerzeuger nebeneinander vor einer hydraulischen Weiche, mehrere Pumpenkreise und eine Zirkulation.</translation>
</message>
<message>
<source>Store heated directly</source>
<extracomment>arrangements</extracomment>
<translation>Direkt beheizter Speicher</translation>
</message>
<message>
<source>Heating in two zones, and a mains-fed store that an immersion heater heats alone.</source>
<extracomment>arrangements</extracomment>
<translation>Heizung in zwei Heizkreisen und ein geschlossener Speicher, den allein ein Elektro-Heizstab heizt.</translation>
</message>
<message>
<source>Two stores, one discharge</source>
<extracomment>arrangements</extracomment>
<translation>Zwei Speicher, eine Abblaseleitung</translation>
</message>
<message>
<source>A guest house: heating and two mains-fed stores, whose tundishes share one larger pipe to the outside.</source>
<extracomment>arrangements</extracomment>
<translation>Ein Gästehaus: Heizung und zwei geschlossene Speicher, deren Ablauftrichter eine gemeinsame größere Leitung ins Freie haben.</translation>
</message>
<message>
<source>Three-port valve, sealed</source>
<extracomment>arrangements</extracomment>
<translation>Dreiwegeventil, geschlossen</translation>
</message>
<message>
<source>Sealed heating with a three-port valve for the rooms and for a store that a cistern feeds.</source>
<extracomment>arrangements</extracomment>
<translation>Geschlossene Heizung mit einem Dreiwegeventil für die Räume und für einen Speicher, den ein Behälter speist.</translation>
</message>
<message>
<source>Store fed from a cistern</source>
<extracomment>arrangements</extracomment>
<translation>Speicher mit Vorlagebehälter</translation>
</message>
<message>
<source>Open-vented with cisterns</source>
<extracomment>arrangements</extracomment>
<translation>Offen, mit Behältern</translation>
</message>
<message>
<source>Heating under an open vent and a feed cistern, and a store that its own cistern feeds.</source>
<extracomment>arrangements</extracomment>
<translation>Heizung unter offener Entlüftung und Vorlagebehälter, und ein Speicher, den ein eigener Behälter speist.</translation>
</message>
<message>
<source>One heat source with all devices built in, which also heats the water as it is drawn.</source>
<extracomment>arrangements</extracomment>
<translation>Ein Wärmeerzeuger mit allen Einrichtungen darin, der auch Trinkwasser im Durchlauf erwärmt.</translation>
</message>
<message>
<source>No store</source>
<extracomment>arrangements</extracomment>
<translation>Kein Speicher</translation>
</message>
<message>
<source>Radiators drawn one by one</source>
<extracomment>arrangements</extracomment>
<translation>Heizkörper einzeln gezeichnet</translation>
</message>
<message>
<source>Sealed heating with each radiator drawn, and a rail without valves as the way round.</source>
<extracomment>arrangements</extracomment>
<translation>Geschlossene Heizung, in der jeder Heizkörper gezeichnet ist, und ein Handtuchheizkörper ohne Ventile als Umweg.</translation>
</message>
<message>
<source>Sealed heating alone, in two zones with an automatic bypass.</source>
<extracomment>arrangements</extracomment>
<translation>Geschlossene Heizung allein, in zwei Heizkreisen mit automatischem Überströmventil.</translation>
</message>
<message>
<source>High point of the heating water has nothing to let air out</source>
<extracomment>checks/titles</extracomment>
<translation>Am Hochpunkt des Heizwassers kann keine Luft heraus</translation>
</message>
<message>
<source>A mixer takes its cold from the main unreduced, its hot from a reduced store</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Mischer nimmt Kaltwasser mit ungemindertem, Warmwasser mit gemindertem Druck</translation>
</message>
<message>
<source>A bath's hot water is not blended down</source>
<extracomment>checks/titles</extracomment>
<translation>Das Warmwasser einer Badewanne wird nicht heruntergemischt</translation>
</message>
<message>
<source>Bypass set wrong</source>
<extracomment>checks/titles</extracomment>
<translation>Überströmventil falsch eingestellt</translation>
</message>
<message>
<source>A storage cistern runs dry</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Vorlagebehälter läuft leer</translation>
</message>
<message>
<source>Cistern's water stands below what it is to fill</source>
<extracomment>checks/titles</extracomment>
<translation>Wasser im Behälter steht niedriger als das, was es füllen soll</translation>
</message>
<message>
<source>Feed cistern is too small for its circuit</source>
<extracomment>checks/titles</extracomment>
<translation>Vorlagebehälter ist zu klein für seinen Kreis</translation>
</message>
<message>
<source>Heating and hot water share a cistern</source>
<extracomment>checks/titles</extracomment>
<translation>Heizung und Warmwasser teilen sich einen Behälter</translation>
</message>
<message>
<source>Store's coil is not fit for a sealed circuit</source>
<extracomment>checks/titles</extracomment>
<translation>Heizschlange des Speichers taugt nicht für einen geschlossenen Kreis</translation>
</message>
<message>
<source>Nothing keeps heated water from pushing back into the main</source>
<extracomment>checks/titles</extracomment>
<translation>Nichts hindert erwärmtes Wasser, in den Hausanschluss zurückzudrücken</translation>
</message>
<message>
<source>Cold water is drawn between the check valve and the store</source>
<extracomment>checks/titles</extracomment>
<translation>Kaltwasser wird zwischen Rückflussverhinderer und Speicher entnommen</translation>
</message>
<message>
<source>Open-vented heating has no cold feed</source>
<extracomment>checks/titles</extracomment>
<translation>Offene Heizung hat keine Speiseleitung</translation>
</message>
<message>
<source>Heat source can be cut off from its cold feed</source>
<extracomment>checks/titles</extracomment>
<translation>Wärmeerzeuger kann von seiner Speiseleitung abgesperrt werden</translation>
</message>
<message>
<source>Two connections of a part are changed over</source>
<extracomment>checks/titles</extracomment>
<translation>Zwei Anschlüsse eines Bauteils sind vertauscht</translation>
</message>
<message>
<source>Too little water always circulates for the heat source</source>
<extracomment>checks/titles</extracomment>
<translation>Für den Wärmeerzeuger läuft immer zu wenig Wasser um</translation>
</message>
<message>
<source>Heating water and drinking water can meet</source>
<extracomment>checks/titles</extracomment>
<translation>Heizwasser und Trinkwasser können zusammenkommen</translation>
</message>
<message>
<source>Store's energy cut-out shuts no valve that stops the coil</source>
<extracomment>checks/titles</extracomment>
<translation>Sicherheitstemperaturbegrenzer des Speichers schließt kein Ventil, das die Heizschlange stoppt</translation>
</message>
<message>
<source>A relief or safety valve discharges nowhere</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Sicherheitsventil bläst ins Nichts ab</translation>
</message>
<message>
<source>A discharge pipe is too small</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Abblaseleitung ist zu klein</translation>
</message>
<message>
<source>A discharge pipe can be shut</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Abblaseleitung kann geschlossen werden</translation>
</message>
<message>
<source>A discharge ends where it can do harm</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Abblaseleitung endet, wo sie Schaden anrichten kann</translation>
</message>
<message>
<source>A discharge pipe does not stand the heat</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Abblaseleitung hält die Hitze nicht aus</translation>
</message>
<message>
<source>A discharge pipe rises, or falls too little</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Abblaseleitung steigt oder fällt zu wenig</translation>
</message>
<message>
<source>A discharge pipe is too long for its bore</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Abblaseleitung ist zu lang für ihren Durchmesser</translation>
</message>
<message>
<source>Stretch of heating pipework cannot be drained</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Stück Heizrohrnetz kann nicht entleert werden</translation>
</message>
<message>
<source>Emitter or coil that no water can be driven through</source>
<extracomment>checks/titles</extracomment>
<translation>Heizfläche oder Heizschlange, durch die kein Wasser gefördert werden kann</translation>
</message>
<message>
<source>Emitter starved of water</source>
<extracomment>checks/titles</extracomment>
<translation>Heizfläche bekommt zu wenig Wasser</translation>
</message>
<message>
<source>Store has no expansion relief valve</source>
<extracomment>checks/titles</extracomment>
<translation>Speicher hat kein Ausdehnungs-Sicherheitsventil</translation>
</message>
<message>
<source>Circuit is filled too low for its vessel to hold a reserve</source>
<extracomment>checks/titles</extracomment>
<translation>Kreis ist zu niedrig gefüllt für eine Wasservorlage im Ausdehnungsgefäß</translation>
</message>
<message>
<source>Sealed circuit has no filling link</source>
<extracomment>checks/titles</extracomment>
<translation>Geschlossener Kreis hat keine Füllverbindung</translation>
</message>
<message>
<source>Filling link left connected</source>
<extracomment>checks/titles</extracomment>
<translation>Füllverbindung bleibt verbunden</translation>
</message>
<message>
<source>Filling link without a double check valve</source>
<extracomment>checks/titles</extracomment>
<translation>Füllverbindung ohne doppelten Rückflussverhinderer</translation>
</message>
<message>
<source>Heating water has no filter</source>
<extracomment>checks/titles</extracomment>
<translation>Heizwasser hat keinen Filter</translation>
</message>
<message>
<source>Part fitted the wrong way round</source>
<extracomment>checks/titles</extracomment>
<translation>Bauteil verkehrt herum eingebaut</translation>
</message>
<message>
<source>Floor heating that nothing keeps from the full flow temperature</source>
<extracomment>checks/titles</extracomment>
<translation>Fußbodenheizung, die nichts vor der vollen Vorlauftemperatur schützt</translation>
</message>
<message>
<source>Filled store is heavier than the floor is stated to carry</source>
<extracomment>checks/titles</extracomment>
<translation>Gefüllter Speicher ist schwerer, als der Boden laut Angabe trägt</translation>
</message>
<message>
<source>Sealed circuit has no pressure gauge</source>
<extracomment>checks/titles</extracomment>
<translation>Geschlossener Kreis hat kein Manometer</translation>
</message>
<message>
<source>Heat source that can be fired though every thermostat is satisfied</source>
<extracomment>checks/titles</extracomment>
<translation>Wärmeerzeuger, der heizen kann, obwohl jeder Thermostat zufrieden ist</translation>
</message>
<message>
<source>Uncontrolled heat has nowhere to go that nothing can shut</source>
<extracomment>checks/titles</extracomment>
<translation>Nicht regelbare Wärme kann nirgends hin, wo nichts sie absperren kann</translation>
</message>
<message>
<source>Heat strays where it is not called</source>
<extracomment>checks/titles</extracomment>
<translation>Wärme verirrt sich dorthin, wo keine gefordert ist</translation>
</message>
<message>
<source>Heights that disagree</source>
<extracomment>checks/titles</extracomment>
<translation>Höhen, die sich widersprechen</translation>
</message>
<message>
<source>A hot pipe to an outlet is too long</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Warmwasserleitung zu einer Zapfstelle ist zu lang</translation>
</message>
<message>
<source>A store that can pass 80 °C feeds an outlet unblended</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Speicher, der 80 °C abgeben kann, speist eine Zapfstelle ungemischt</translation>
</message>
<message>
<source>Hot water is slow to come</source>
<extracomment>checks/titles</extracomment>
<translation>Warmes Wasser kommt spät</translation>
</message>
<message>
<source>Immersion heater has no cut-out</source>
<extracomment>checks/titles</extracomment>
<translation>Elektro-Heizstab hat keinen Begrenzer</translation>
</message>
<message>
<source>One label on two parts</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Bezeichnung an zwei Bauteilen</translation>
</message>
<message>
<source>The main is too weak for what it feeds</source>
<extracomment>checks/titles</extracomment>
<translation>Der Hausanschluss ist zu schwach für das, was daran hängt</translation>
</message>
<message>
<source>Something looks joined and is not</source>
<extracomment>checks/titles</extracomment>
<translation>Etwas sieht verbunden aus und ist es nicht</translation>
</message>
<message>
<source>The pipe below the tundish bends too soon</source>
<extracomment>checks/titles</extracomment>
<translation>Das Rohr unter dem Ablauftrichter biegt zu früh ab</translation>
</message>
<message>
<source>No way round for the heat source when the zones shut</source>
<extracomment>checks/titles</extracomment>
<translation>Kein Umweg für den Wärmeerzeuger, wenn die Heizkreise schließen</translation>
</message>
<message>
<source>An end that is not joined</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Ende, das nicht angeschlossen ist</translation>
</message>
<message>
<source>Open-vented heating has no open vent</source>
<extracomment>checks/titles</extracomment>
<translation>Offene Heizung hat keine offene Entlüftung</translation>
</message>
<message>
<source>Heat source can be cut off from its open vent</source>
<extracomment>checks/titles</extracomment>
<translation>Wärmeerzeuger kann von seiner offenen Entlüftung abgesperrt werden</translation>
</message>
<message>
<source>An open vent is too small</source>
<extracomment>checks/titles</extracomment>
<translation>Eine offene Entlüftung ist zu klein</translation>
</message>
<message>
<source>Sealed heat source has no hand-reset high limit</source>
<extracomment>checks/titles</extracomment>
<translation>Geschlossener Wärmeerzeuger hat keinen von Hand zu entriegelnden Sicherheitstemperaturbegrenzer</translation>
</message>
<message>
<source>Parts lie on one another</source>
<extracomment>checks/titles</extracomment>
<translation>Bauteile liegen aufeinander</translation>
</message>
<message>
<source>Water too fast in a pipe</source>
<extracomment>checks/titles</extracomment>
<translation>Wasser zu schnell in einem Rohr</translation>
</message>
<message>
<source>Plastic pipe too close to a heat source</source>
<extracomment>checks/titles</extracomment>
<translation>Kunststoffrohr zu nahe am Wärmeerzeuger</translation>
</message>
<message>
<source>Pump runs against shut valves</source>
<extracomment>checks/titles</extracomment>
<translation>Pumpe läuft gegen geschlossene Ventile</translation>
</message>
<message>
<source>A pump between open vent and cold feed</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Pumpe zwischen offener Entlüftung und Speiseleitung</translation>
</message>
<message>
<source>A pump can push water out of the open vent, or draw air in</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Pumpe kann Wasser aus der offenen Entlüftung drücken oder Luft ansaugen</translation>
</message>
<message>
<source>Pump too weak for what it serves</source>
<extracomment>checks/titles</extracomment>
<translation>Pumpe zu schwach für das, was daran hängt</translation>
</message>
<message>
<source>Store can be cut off from a relief valve</source>
<extracomment>checks/titles</extracomment>
<translation>Speicher kann von einem Sicherheitsventil abgesperrt werden</translation>
</message>
<message>
<source>Temperature relief valve does not stand on the store's relief port</source>
<extracomment>checks/titles</extracomment>
<translation>Temperatur-Sicherheitsventil sitzt nicht am Abblaseanschluss des Speichers</translation>
</message>
<message>
<source>Relief valve's setting does not fit the store or the reducing valve</source>
<extracomment>checks/titles</extracomment>
<translation>Einstellung des Sicherheitsventils passt nicht zum Speicher oder Druckminderer</translation>
</message>
<message>
<source>Heated water has no safety valve</source>
<extracomment>checks/titles</extracomment>
<translation>Erwärmtes Wasser hat kein Sicherheitsventil</translation>
</message>
<message>
<source>Safety valve is not close by the heat source</source>
<extracomment>checks/titles</extracomment>
<translation>Sicherheitsventil sitzt nicht nahe am Wärmeerzeuger</translation>
</message>
<message>
<source>Heat source can be cut off from its safety valve</source>
<extracomment>checks/titles</extracomment>
<translation>Wärmeerzeuger kann von seinem Sicherheitsventil abgesperrt werden</translation>
</message>
<message>
<source>Safety valve is set higher than what it protects can bear</source>
<extracomment>checks/titles</extracomment>
<translation>Sicherheitsventil ist höher eingestellt, als das Geschützte aushält</translation>
</message>
<message>
<source>Safety valve is too small for the heat</source>
<extracomment>checks/titles</extracomment>
<translation>Sicherheitsventil ist zu klein für die Wärme</translation>
</message>
<message>
<source>A secondary return without a check valve</source>
<extracomment>checks/titles</extracomment>
<translation>Eine Zirkulation ohne Rückflussverhinderer</translation>
</message>
<message>
<source>One discharge pipe for several stores is too small</source>
<extracomment>checks/titles</extracomment>
<translation>Eine gemeinsame Abblaseleitung mehrerer Speicher ist zu klein</translation>
</message>
<message>
<source>Heat source gets less water than it needs</source>
<extracomment>checks/titles</extracomment>
<translation>Wärmeerzeuger bekommt weniger Wasser, als er braucht</translation>
</message>
<message>
<source>Nothing shuts the house off from the main</source>
<extracomment>checks/titles</extracomment>
<translation>Nichts sperrt das Haus vom Hausanschluss ab</translation>
</message>
<message>
<source>Nothing holds the main's pressure down to what the store is made for</source>
<extracomment>checks/titles</extracomment>
<translation>Nichts senkt den Druck des Hausanschlusses auf den, für den der Speicher gebaut ist</translation>
</message>
<message>
<source>No store thermostat acts on what stops the coil</source>
<extracomment>checks/titles</extracomment>
<translation>Kein Speicherthermostat wirkt auf das, was die Heizschlange stoppt</translation>
</message>
<message>
<source>A hot water store is kept too cool</source>
<extracomment>checks/titles</extracomment>
<translation>Ein Warmwasserspeicher wird zu kühl gehalten</translation>
</message>
<message>
<source>A vented store has no open vent</source>
<extracomment>checks/titles</extracomment>
<translation>Ein offener Speicher hat keine offene Entlüftung</translation>
</message>
<message>
<source>A vented store can be cut off from its open vent</source>
<extracomment>checks/titles</extracomment>
<translation>Ein offener Speicher kann von seiner offenen Entlüftung abgesperrt werden</translation>
</message>
<message>
<source>Store has no expansion vessel</source>
<extracomment>checks/titles</extracomment>
<translation>Speicher hat kein Ausdehnungsgefäß</translation>
</message>
<message>
<source>Store can be cut off from its vessel</source>
<extracomment>checks/titles</extracomment>
<translation>Speicher kann von seinem Ausdehnungsgefäß abgesperrt werden</translation>
</message>
<message>
<source>Store's vessel is charged wrongly</source>
<extracomment>checks/titles</extracomment>
<translation>Ausdehnungsgefäß des Speichers hat einen falschen Vordruck</translation>
</message>
<message>
<source>Store's vessel is too small for its water</source>
<extracomment>checks/titles</extracomment>
<translation>Ausdehnungsgefäß des Speichers ist zu klein für sein Wasser</translation>
</message>
<message>
<source>Store has no temperature relief valve</source>
<extracomment>checks/titles</extracomment>
<translation>Speicher hat kein Temperatur-Sicherheitsventil</translation>
</message>
<message>
<source>Thermostatic head in the room of the room thermostat</source>
<extracomment>checks/titles</extracomment>
<translation>Thermostatkopf im Raum des Raumthermostats</translation>
</message>
<message>
<source>A store's relief valve discharges through no tundish</source>
<extracomment>checks/titles</extracomment>
<translation>Das Sicherheitsventil eines Speichers bläst ohne Ablauftrichter ab</translation>
</message>
<message>
<source>The tundish is out of sight</source>
<extracomment>checks/titles</extracomment>
<translation>Der Ablauftrichter ist außer Sicht</translation>
</message>
<message>
<source>The tundish is too far from the relief valve</source>
<extracomment>checks/titles</extracomment>
<translation>Der Ablauftrichter ist zu weit vom Sicherheitsventil entfernt</translation>
</message>
<message>
<source>Pipes meet on the sheet so that they could be taken as joined</source>
<extracomment>checks/titles</extracomment>
<translation>Rohre treffen sich auf dem Blatt so, dass man sie für verbunden halten könnte</translation>
</message>
<message>
<source>Heat that nothing can stop goes into a mains-fed store</source>
<extracomment>checks/titles</extracomment>
<translation>Wärme, die nichts abstellen kann, geht in einen geschlossenen Speicher</translation>
</message>
<message>
<source>Uncontrolled heat on a sealed circuit</source>
<extracomment>checks/titles</extracomment>
<translation>Nicht regelbare Wärme an einem geschlossenen Kreis</translation>
</message>
<message>
<source>Parts that no heat source, store or main reaches</source>
<extracomment>checks/titles</extracomment>
<translation>Bauteile, die kein Wärmeerzeuger, Speicher oder Hausanschluss erreicht</translation>
</message>
<message>
<source>Open vent and cold feed join a pumped circuit too far apart</source>
<extracomment>checks/titles</extracomment>
<translation>Offene Entlüftung und Speiseleitung treffen zu weit auseinander auf einen Pumpenkreis</translation>
</message>
<message>
<source>An open vent ends over the wrong cistern</source>
<extracomment>checks/titles</extracomment>
<translation>Eine offene Entlüftung endet über dem falschen Behälter</translation>
</message>
<message>
<source>An open vent falls on its way up</source>
<extracomment>checks/titles</extracomment>
<translation>Eine offene Entlüftung fällt auf dem Weg nach oben</translation>
</message>
<message>
<source>A vented store is joined to the main</source>
<extracomment>checks/titles</extracomment>
<translation>Ein offener Speicher ist mit dem Hausanschluss verbunden</translation>
</message>
<message>
<source>Heated water has no expansion vessel</source>
<extracomment>checks/titles</extracomment>
<translation>Erwärmtes Wasser hat kein Ausdehnungsgefäß</translation>
</message>
<message>
<source>Heat source can be cut off from its vessel</source>
<extracomment>checks/titles</extracomment>
<translation>Wärmeerzeuger kann von seinem Ausdehnungsgefäß abgesperrt werden</translation>
</message>
<message>
<source>Expansion vessel is on the pump's delivery</source>
<extracomment>checks/titles</extracomment>
<translation>Ausdehnungsgefäß sitzt auf der Druckseite der Pumpe</translation>
</message>
<message>
<source>Expansion vessel is charged wrongly</source>
<extracomment>checks/titles</extracomment>
<translation>Ausdehnungsgefäß hat einen falschen Vordruck</translation>
</message>
<message>
<source>Expansion vessel is too small</source>
<extracomment>checks/titles</extracomment>
<translation>Ausdehnungsgefäß ist zu klein</translation>
</message>
<message>
<source>Heating zone without a control</source>
<extracomment>checks/titles</extracomment>
<translation>Heizkreis ohne Regler</translation>
</message>
<message>
<source>Zones that share one motor valve</source>
<extracomment>checks/titles</extracomment>
<translation>Heizkreise, die sich ein Motorventil teilen</translation>
</message>
<message>
<source>A part in heating water that stands higher than all that it is joined to, with nothing there that lets air out: no air vent, emitter, open vent or cistern. Parts that stand level count as one high point. What stands at the end of a pipe of its own, as a gauge, a safety valve, a vessel or a cap, is no high point, nor is what stands on its way there: no water has to pass it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Bauteil im Heizwasser, das höher steht als alles, woran es angeschlossen ist, ohne dass dort etwas Luft herauslässt: weder Entlüfter noch Heizfläche, offene Entlüftung oder Behälter. Bauteile auf gleicher Höhe zählen als ein Hochpunkt. Was am Ende eines eigenen Rohrs sitzt, wie ein Manometer, ein Sicherheitsventil, ein Ausdehnungsgefäß oder eine Kappe, ist kein Hochpunkt, ebenso wenig, was auf dem Weg dorthin sitzt: Dort muss kein Wasser vorbei.</translation>
</message>
<message>
<source>Air comes out of the water as it is heated and gathers where the pipe is highest. There it makes an air lock: the pump cannot push water over it, the coil or the rooms beyond stay cold, the pipes gurgle, and the steel rusts from within.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Aus dem Wasser tritt beim Erwärmen Luft aus und sammelt sich, wo das Rohr am höchsten liegt. Dort bildet sie einen Luftsack: Die Pumpe bekommt kein Wasser darüber, die Heizschlange oder die Räume dahinter bleiben kalt, die Rohre gluckern, und der Stahl rostet von innen.</translation>
</message>
<message>
<source>Fit an air vent on the high point, upright; or lead the pipe so that it rises all the way to an emitter or a vent.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie am Hochpunkt einen senkrecht stehenden Entlüfter ein; oder führen Sie das Rohr so, dass es durchweg zu einer Heizfläche oder einem Entlüfter ansteigt.</translation>
</message>
<message>
<source>An outlet or blending valve with hot from a mains-fed store behind a reducing valve, and cold that comes from the main by some way without one. Advice; a fault where the main can stand higher than the store's expansion relief valve is set and its pressure can pass back through the mixer.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Eine Zapfstelle oder ein Mischventil mit Warmwasser aus einem geschlossenen Speicher hinter einem Druckminderer und mit Kaltwasser, das auf irgendeinem Weg ohne Druckminderer vom Hausanschluss kommt. Empfehlung; ein Mangel, wo der Druck des Hausanschlusses höher stehen kann, als das Ausdehnungs-Sicherheitsventil des Speichers eingestellt ist, und durch den Mischer zurück kann.</translation>
</message>
<message>
<source>The stronger side pushes back the weaker: the mix runs cold, then hot when a tap elsewhere opens, and a shower scalds. Through a mixer left open with its outlet shut the whole pressure of the main stands on the store, until its relief valve weeps and never stops.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Die stärkere Seite drückt die schwächere zurück: Die Mischung wird kalt, dann heiß, wenn anderswo ein Hahn aufgeht, und eine Dusche verbrüht. Durch einen offenen Mischer mit geschlossenem Auslauf steht der ganze Druck des Hausanschlusses am Speicher, bis dessen Sicherheitsventil tropft und nicht mehr aufhört.</translation>
</message>
<message>
<source>Take the cold of every mixer from behind the store's reducing valve, before the check valve: the balanced cold connection.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Nehmen Sie das Kaltwasser jedes Mischers hinter dem Druckminderer des Speichers und vor dem Rückflussverhinderer ab: am Anschluss für druckgleiches Kaltwasser.</translation>
</message>
<message>
<source>A bath whose hot tap water above 48 °C can reach by some way without a blending valve set to 48 °C or less: from a store whose thermostat is set above 48 °C, or that heat reaches which nothing stops, or from what heats water as it is drawn. A blending valve set above 48 °C is none. Danger in a new dwelling, advice in an existing one.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Eine Badewanne, deren Warmwasserhahn auf irgendeinem Weg Wasser über 48 °C erreichen kann, ohne dass ein auf 48 °C oder weniger eingestelltes Mischventil dazwischen sitzt: aus einem Speicher, dessen Thermostat über 48 °C steht oder zu dem Wärme gelangt, die nichts abstellt, oder aus einem Durchlauf. Ein über 48 °C eingestelltes Mischventil zählt nicht. Gefahr in einer neuen Wohnung, Empfehlung im Bestand.</translation>
</message>
<message>
<source>A person who slips into a bath run too hot cannot get out in time. Water at 60 °C burns through the skin in seconds; the very young and the very old are scalded worst, and every year some die.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Wer in ein zu heiß eingelassenes Bad rutscht, kommt nicht rechtzeitig heraus. Wasser von 60 °C verbrennt die Haut in Sekunden; ganz Junge und ganz Alte verbrühen sich am schlimmsten, und jedes Jahr sterben einige daran.</translation>
</message>
<message>
<source>Fit a blending valve with a locked setting of 48 °C or less (44 °C is usual) in the bath's hot pipe, close to the bath, with cold of the same pressure on its other side.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Bauen Sie nahe an der Wanne ein Mischventil mit gesicherter Einstellung von 48 °C oder weniger (üblich sind 44 °C) in ihre Warmwasserleitung ein, mit Kaltwasser von gleichem Druck auf der anderen Seite.</translation>
</message>
<message>
<source>By the solved pressures the bypass stays shut at pump run-on, so that the heat source gets less than its least flow (or none): it is then no way round, and a fault. Or it opens while heating or hot water is called: advice. One that is fitted the wrong way round is another check's business.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Nach den gelösten Drücken bleibt das Überströmventil beim Pumpennachlauf zu, sodass der Wärmeerzeuger weniger als seinen Mindestvolumenstrom bekommt (oder keinen): Dann ist es kein Umweg, und das ist ein Mangel. Oder es öffnet, während Heizung oder Warmwasser gefordert ist: Empfehlung. Eines, das verkehrt herum sitzt, ist Sache einer anderen Prüfung.</translation>
</message>
<message>
<source>Set too high, the bypass never opens and the heat of the run-on stays in the heat source. Set too low, it takes water that the rooms should have, and sends hot water straight back so that the heat source never cools it enough to run well.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Zu hoch eingestellt, öffnet das Überströmventil nie, und die Wärme des Nachlaufs bleibt im Wärmeerzeuger. Zu niedrig eingestellt, nimmt es Wasser weg, das den Räumen gehört, und schickt Heißes geradewegs zurück, sodass der Wärmeerzeuger nie kühl genug für guten Betrieb wird.</translation>
</message>
<message>
<source>Set it between the pressure across it with the zones open and the pressure at which the pump stands with them shut; both are told in the message.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Stellen Sie es zwischen dem Druck ein, der bei offenen Heizkreisen daran liegt, und dem Druck, den die Pumpe bei geschlossenen aufbaut; beide nennt der Befund.</translation>
</message>
<message>
<source>A storage cistern that holds less than a bath draws, where a bath is fed from it. Several cisterns that feed the same water count together.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein Vorlagebehälter, der weniger enthält, als eine Badewanne zapft, die daraus gespeist wird. Mehrere Behälter, die dasselbe Wasser speisen, zählen zusammen.</translation>
</message>
<message>
<source>The float valve lets water in far more slowly than a bath draws it. An empty cistern lets air into the pipes, the hot tap stops half way through the bath, and the air lock has to be driven out. Worse, a mixing shower on the same cistern may lose its cold water first.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Das Schwimmerventil lässt Wasser viel langsamer nach, als eine Badewanne es zapft. Ein leerer Behälter lässt Luft in die Rohre, der Warmwasserhahn versiegt mitten im Einlassen, und der Luftsack muss herausgetrieben werden. Schlimmer: Eine Mischdusche am selben Behälter kann zuerst ihr Kaltwasser verlieren.</translation>
</message>
<message>
<source>Fit a cistern that holds more than the largest bath takes.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Bauen Sie einen Behälter ein, der mehr enthält, als die größte Wanne braucht.</translation>
</message>
<message>
<source>An emitter, heat source, coil, store or outlet on the water that a cistern feeds, standing higher than that cistern's water. Where several cisterns feed one water, the highest counts. An outlet behind a pump that lifts its water is left out, as are outlets on water that a main feeds too; a pump that only drives a secondary return round lifts nothing.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Eine Heizfläche, ein Wärmeerzeuger, eine Heizschlange, ein Speicher oder eine Zapfstelle an Wasser, das ein Behälter speist, höher gelegen als dessen Wasserspiegel. Wo mehrere Behälter ein Wasser speisen, zählt der höchste. Eine Zapfstelle hinter einer Pumpe, die ihr Wasser hebt, bleibt außer Betracht, ebenso Zapfstellen an Wasser, das auch ein Hausanschluss speist; eine Pumpe, die nur eine Zirkulation umwälzt, hebt nichts.</translation>
</message>
<message>
<source>Water from a cistern rises to the level it stands at there, and no further: what lies above never fills, gives no heat or runs dry, and the air that stays in it can stop the whole circuit. It is the usual end of a new top-floor radiator or a shower in the loft on an old tank-fed system.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Wasser aus einem Behälter steigt so hoch, wie es dort steht, und nicht weiter: Was darüber liegt, füllt sich nie, gibt keine Wärme oder läuft leer, und die Luft, die darin bleibt, kann den ganzen Kreis anhalten. So endet meist ein neuer Heizkörper im obersten Geschoss oder eine Dusche unter dem Dach an einer alten Anlage mit Behälter.</translation>
</message>
<message>
<source>Raise the cistern, with its water above all that it feeds; or bring the part down; or make the circuit a sealed one, filled under pressure.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Heben Sie den Behälter an, mit dem Wasserspiegel über allem, was er speist; oder setzen Sie das Bauteil tiefer; oder machen Sie daraus einen geschlossenen Kreis, der unter Druck gefüllt wird.</translation>
</message>
<message>
<source>The cisterns that feed an open-vented heating circuit hold less than its water gains as it is heated, taken as 4 % of its content. Advice where they take up the swell but hold less than 18 litres, the smallest that is made for the purpose.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Die Behälter, die einen offenen Heizkreis speisen, fassen weniger, als sein Wasser beim Erwärmen gewinnt, angesetzt mit 4 % des Inhalts. Empfehlung, wo sie die Ausdehnung aufnehmen, aber weniger als 18 Liter fassen, das Kleinste, was dafür hergestellt wird.</translation>
</message>
<message>
<source>Heated water swells, and an open-vented circuit pushes what it gains back into its cistern. A cistern that has no room for it runs over through the warning pipe at every heating, and draws the same amount of fresh water at every cooling. Fresh water brings air and lime, and the radiators rust.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Erwärmtes Wasser dehnt sich aus, und ein offener Kreis drückt den Zuwachs in seinen Behälter zurück. Ein Behälter ohne Raum dafür läuft bei jedem Aufheizen durch den Überlauf über und zieht bei jedem Abkühlen ebenso viel frisches Wasser nach. Frisches Wasser bringt Luft und Kalk, und die Heizkörper rosten.</translation>
</message>
<message>
<source>Fit a cistern large enough, and set its float valve so low that the swell finds room below the warning pipe.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Bauen Sie einen ausreichend großen Behälter ein und stellen Sie sein Schwimmerventil so niedrig ein, dass die Ausdehnung unter dem Überlauf Raum findet.</translation>
</message>
<message>
<source>One cistern that feeds heating water and also the hot water of a store or tap, or that is said to serve the one and feeds the other. Old direct hot water, where the heat source heats the store's own water and nothing else, is no such case.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein Behälter, der Heizwasser und zugleich das Warmwasser eines Speichers oder Hahns speist, oder der für das eine da sein soll und das andere speist. Alte unmittelbare Warmwasserbereitung, bei der der Wärmeerzeuger das Wasser des Speichers selbst erwärmt und sonst nichts, ist kein solcher Fall.</translation>
</message>
<message>
<source>Heating water is black with rust and dosed with inhibitor. Through a shared cistern, or the pipes that meet below it, it gets into water that people wash in and drink, and fresh water that is drawn off brings new air and lime to the radiators every day.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Heizwasser ist schwarz von Rost und mit Inhibitor versetzt. Durch einen gemeinsamen Behälter oder die Rohre, die darunter zusammentreffen, gelangt es in Wasser, mit dem Menschen sich waschen und das sie trinken, und frisches Wasser für das Gezapfte bringt den Heizkörpern jeden Tag neue Luft und neuen Kalk.</translation>
</message>
<message>
<source>Give the heating a small feed cistern of its own, and bring its vent over that one.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Geben Sie der Heizung einen eigenen kleinen Vorlagebehälter und führen Sie ihre Entlüftung über diesen.</translation>
</message>
<message>
<source>A store's coil in a sealed circuit whose highest pressure is below the safety valve's setting plus 0.35 bar. Exactly that passes. The lowest set of several safety valves counts.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Die Heizschlange eines Speichers in einem geschlossenen Kreis, deren Höchstdruck unter dem Ansprechdruck des Sicherheitsventils plus 0,35 bar liegt. Genau dieser Wert genügt. Bei mehreren Sicherheitsventilen zählt das am niedrigsten eingestellte.</translation>
</message>
<message>
<source>In a sealed circuit the coil bears whatever the safety valve lets the pressure climb to, and a little more while it opens. A coil made for the head of a cistern gives way under that, and heating water gets into the hot water.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>In einem geschlossenen Kreis trägt die Heizschlange, was das Sicherheitsventil an Druck zulässt, und beim Öffnen etwas mehr. Eine Heizschlange, die für die Höhe eines Behälters gebaut ist, gibt dabei nach, und Heizwasser gelangt ins Warmwasser.</translation>
</message>
<message>
<source>Use a store whose coil is stated for the safety valve's setting plus 0.35 bar or more.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Verwenden Sie einen Speicher, dessen Heizschlange für den Ansprechdruck des Sicherheitsventils plus 0,35 bar oder mehr angegeben ist.</translation>
</message>
<message>
<source>A mains-fed store from which water can go back into the main with no check valve on the way. A reducing valve is not a check valve. An inlet group has one in it, and a store may have one built in.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher, von dem Wasser in den Hausanschluss zurück kann, ohne dass ein Rückflussverhinderer auf dem Weg sitzt. Ein Druckminderer ist kein Rückflussverhinderer. Eine Sicherheitsgruppe enthält einen, und ein Speicher kann einen eingebaut haben.</translation>
</message>
<message>
<source>Water that swells takes the easiest way: back down the cold feed. Without a check valve, warm water that has stood in a store comes out of cold taps, and in the end reaches the main and other people's drinking water.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Wasser, das sich ausdehnt, nimmt den leichtesten Weg: den Kaltwasserzulauf zurück. Ohne Rückflussverhinderer kommt warmes Wasser, das im Speicher gestanden hat, aus Kaltwasserhähnen und gelangt am Ende in den Hausanschluss und ins Trinkwasser anderer.</translation>
</message>
<message>
<source>Fit a check valve in the cold feed after the reducing valve and its branch for balanced cold, with its arrow towards the store.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie in den Kaltwasserzulauf, nach dem Druckminderer und dem Abzweig für druckgleiches Kaltwasser, einen Rückflussverhinderer ein, dessen Pfeil zum Speicher zeigt.</translation>
</message>
<message>
<source>A cold outlet, or the cold of a blending valve, joined to the pipe between a mains-fed store and the check valve before it. A store with its check valve built in has no such pipe.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Eine Kaltwasser-Zapfstelle oder das Kaltwasser eines Mischventils, angeschlossen an das Rohr zwischen einem geschlossenen Speicher und dem Rückflussverhinderer davor. Ein Speicher mit eingebautem Rückflussverhinderer hat kein solches Rohr.</translation>
</message>
<message>
<source>As the store heats up its water swells back into that pipe. What is drawn there comes warm, at the temperature legionella likes, and the check valve no longer stands between tap and store: when the main fails, an open tap draws the store's own water back through its cold inlet.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Heizt sich der Speicher auf, dehnt sich sein Wasser in dieses Rohr zurück aus. Was dort gezapft wird, kommt warm, mit der Temperatur, die Legionellen mögen, und der Rückflussverhinderer steht nicht mehr zwischen Hahn und Speicher: Fällt der Hausanschluss aus, zieht ein offener Hahn das Wasser des Speichers durch dessen Kaltwassereintritt zurück.</translation>
</message>
<message>
<source>Join the outlet's cold before the check valve: to the balanced cold connection behind the reducing valve.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Schließen Sie das Kaltwasser der Zapfstelle vor dem Rückflussverhinderer an: an das druckgleiche Kaltwasser hinter dem Druckminderer.</translation>
</message>
<message>
<source>A circuit with an open vent whose heated water is fed from no cistern by a way that water can take both ways.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein Kreis mit offener Entlüftung, dessen erwärmtes Wasser kein Behälter auf einem Weg speist, den Wasser in beide Richtungen nehmen kann.</translation>
</message>
<message>
<source>Water lost through the vent or by evaporation must be made up by itself, and swelling water must be able to push back into the cistern. Without a feed the circuit slowly empties until the heat source heats air or steam; through a check valve it fills, but cannot swell back.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Wasser, das durch die Entlüftung oder durch Verdunsten verloren geht, muss sich von selbst ersetzen, und Ausdehnungswasser muss in den Behälter zurückdrücken können. Ohne Speisung läuft der Kreis langsam leer, bis der Wärmeerzeuger Luft oder Dampf heizt; durch einen Rückflussverhinderer füllt er sich, kann sich aber nicht zurück ausdehnen.</translation>
</message>
<message>
<source>Run a cold feed of at least 15 mm from the feed cistern to the return near the heat source, on the suction side of the pump, with no valve in it.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie eine Speiseleitung von mindestens 15 mm vom Vorlagebehälter zum Rücklauf nahe am Wärmeerzeuger, auf der Saugseite der Pumpe, ohne Ventil darin.</translation>
</message>
<message>
<source>Some positions of the valves leave the heated water of an open-vented circuit without its cold feed. A secured valve is no excuse. A valve in a store's own cold feed is usual and is not meant here.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Manche Stellungen der Ventile lassen das erwärmte Wasser einer offenen Heizung ohne Speiseleitung. Ein gesichertes Ventil entschuldigt das nicht. Ein Ventil im Kaltwasserzulauf eines Speichers ist üblich und hier nicht gemeint.</translation>
</message>
<message>
<source>With the feed shut, water lost through the vent is not made up; the heat source runs short of water, boils, and can crack when cold water meets it again.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ist die Speisung geschlossen, wird Wasser, das durch die Entlüftung verloren geht, nicht ersetzt; dem Wärmeerzeuger fehlt Wasser, er siedet und kann reißen, wenn ihn wieder kaltes Wasser trifft.</translation>
</message>
<message>
<source>Run the cold feed from the cistern to the return without any valve in it, joined where nothing can shut between it and the heat source.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie die Speiseleitung ohne jedes Ventil vom Behälter zum Rücklauf, angeschlossen, wo zwischen ihr und dem Wärmeerzeuger nichts schließen kann.</translation>
</message>
<message>
<source>A store, or a heat source that heats drinking water on its way, whose cold feed comes to another connection than its cold, whose hot water is drawn from another than its hot, or whose secondary circuit comes back by another than its secondary return. A tap or a blending valve whose cold gets the hot water; a blending valve that water is drawn from by its cold. A heat source whose flow leads to the return of all that it feeds: its own flow and return are changed over, or theirs. A separator that the heat source's water does not enter above and leave below. As advice, a coil or an exchanger whose return the flow pipe comes to, and a heat source that feeds but one emitter, by its return: which of the two it is cannot be told, and an emitter heats by either end. For that reason an emitter is left alone where others, or the arrow of a pump, show that the heat source is joined the right way. Nothing is said where water can go either way; nor of a store's connection that nothing is on, or that its relief valve should be on: these are found as what they are.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Speicher, oder ein Wärmeerzeuger, der Trinkwasser im Durchlauf erwärmt, dessen Kaltwasser an einem anderen Anschluss als dem kalten ankommt, dessen Warmwasser an einem anderen als dem warmen entnommen wird, oder dessen Zirkulation an einem anderen als ihrem Anschluss zurückkommt. Ein Hahn oder ein Mischventil, an dessen kaltem Anschluss das Warmwasser ankommt; ein Mischventil, an dessen kaltem Anschluss entnommen wird. Ein Wärmeerzeuger, dessen Vorlauf zum Rücklauf von allem führt, was er versorgt: Vorlauf und Rücklauf sind bei ihm vertauscht oder bei dem, was er versorgt. Eine hydraulische Weiche, in die das Wasser des Wärmeerzeugers nicht oben eintritt, um sie unten zu verlassen. Als Hinweis eine Heizschlange oder ein Wärmeübertrager, an deren Rücklauf das Vorlaufrohr ankommt, und ein Wärmeerzeuger, der nur einen einzigen Heizkörper oder Heizkreis versorgt, und zwar von dessen Rücklauf her: Welches von beiden es ist, lässt sich nicht sagen, und geheizt wird von jedem Ende her. Deshalb bleibt ein Heizkörper unbeanstandet, wo andere, oder der Pfeil einer Pumpe, zeigen, dass der Wärmeerzeuger richtig angeschlossen ist. Nichts gesagt wird, wo das Wasser in beide Richtungen gehen kann; auch nicht von einem Anschluss eines Speichers, an dem nichts ist oder an den dessen Sicherheitsventil gehört: Das wird als das gefunden, was es ist.</translation>
</message>
<message>
<source>The connections are not alike. A store's cold comes in low, so that it pushes the hot up and out at the top: changed over, the cold falls through the hot and stirs it, taps run lukewarm, and relief valve and thermostat feel other water than they are made to feel. Heating water the other way round passes filter, vessel and safety valve in the wrong order, and a separator sends its hot water straight back to the heat source. A coil with its flow below heats the store slower and less evenly. And whoever opens a cold tap does not reckon with hot water.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Die Anschlüsse sind nicht gleich. Das Kaltwasser eines Speichers tritt unten ein, damit es das Warmwasser nach oben hinausschiebt: Vertauscht fällt das Kalte durch das Warme und wirbelt es auf, aus den Hähnen kommt es lau, und Sicherheitsventil und Thermostat spüren anderes Wasser, als sie spüren sollen. Heizwasser, das andersherum läuft, kommt in falscher Reihenfolge an Filter, Ausdehnungsgefäß und Sicherheitsventil vorbei, und eine hydraulische Weiche schickt ihr heißes Wasser geradewegs zum Wärmeerzeuger zurück. Eine Heizschlange mit dem Vorlauf unten heizt den Speicher langsamer und weniger gleichmäßig. Und wer einen Kaltwasserhahn öffnet, rechnet nicht mit heißem Wasser.</translation>
</message>
<message>
<source>Change the two pipes over, at the part itself.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Die beiden Rohre tauschen, am Bauteil selbst.</translation>
</message>
<message>
<source>A heat source that states how much water must go round through it, and a situation in which heating is called and less does: the motor valves stand as their controls put them, and thermostatic heads and what has a hand wheel are shut. Hot water by a coil or an exchanger is passed: what is behind it takes up the heat. So is a heat source that states it needs none, or that no pump serves.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Wärmeerzeuger, der angibt, wie viel Wasser durch ihn umlaufen muss, und ein Betriebszustand, in dem Heizung gefordert ist und weniger umläuft: Motorventile stehen, wie ihre Regler sie stellen, Thermostatköpfe und alles mit Handrad sind zu. Warmwasser durch eine Heizschlange oder einen Wärmeübertrager bleibt außer Betracht: Was dahinter liegt, nimmt die Wärme auf. Ebenso ein Wärmeerzeuger, der laut Angabe nichts braucht oder den keine Pumpe bedient.</translation>
</message>
<message>
<source>Such a heat source cannot turn its heat down as far as one room wants. What it makes too much must go into the water. With only a few litres going round, these are hot within a minute: it stops, starts again, and wears itself out; a heat pump finds no heat in them to melt its ice with.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein solcher Wärmeerzeuger kann seine Leistung nicht so weit senken, wie ein einziger Raum es will. Was er zu viel erzeugt, muss ins Wasser. Laufen nur wenige Liter um, sind sie in einer Minute heiß: Er schaltet ab, startet wieder und verschleißt; eine Wärmepumpe findet darin keine Wärme, um ihr Eis abzutauen.</translation>
</message>
<message>
<source>Leave the emitters of a room or two without thermostatic heads, put the bypass at the far end so that more pipe goes round, or fit a buffer that all the water passes through.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Lassen Sie die Heizflächen in einem oder zwei Räumen ohne Thermostatköpfe, setzen Sie das Überströmventil ans ferne Ende, damit mehr Rohr umläuft, oder bauen Sie einen Pufferspeicher ein, durch den alles Wasser geht.</translation>
</message>
<message>
<source>Water that a heat source or a plate heats for heating, or that fills a store's coil, from which some way leads to drinking water with fewer than two check valves against it: a plain pipe, a single check valve, a filling link left connected without its double check valve. A reducing or blending valve is no check valve. Piped for good through two check valves is a fault. A filling link left connected with its double check valve, or taken off, is another check's. Flagged too: a cistern's water, or a waste, that the main can draw back.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Wasser, das ein Wärmeerzeuger oder eine Platte für die Heizung erwärmt oder das die Heizschlange eines Speichers füllt, und von dem irgendein Weg mit weniger als zwei Rückflussverhinderern dagegen zum Trinkwasser führt: ein bloßes Rohr, ein einzelner Rückflussverhinderer, eine verbunden gelassene Füllverbindung ohne doppelten Rückflussverhinderer. Ein Druckminderer oder Mischventil ist kein Rückflussverhinderer. Dauernd durch zwei Rückflussverhinderer verrohrt, ist es ein Mangel. Eine Füllverbindung, die mit doppeltem Rückflussverhinderer verbunden bleibt oder abgenommen wird, ist Sache einer anderen Prüfung. Auch beanstandet: Wasser eines Behälters oder eines Abflusses, das der Hausanschluss zurücksaugen kann.</translation>
</message>
<message>
<source>Heating water holds rust, inhibitor and whatever lives in it. When the main's pressure drops, as when a hydrant is opened, it is drawn back into the pipe that people drink from, in this house and the next. One check valve lets by sooner or later; that is why two are asked for.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Heizwasser enthält Rost, Inhibitor und was immer darin lebt. Fällt der Druck des Hausanschlusses, etwa wenn ein Hydrant geöffnet wird, wird es in das Rohr zurückgesaugt, aus dem Menschen trinken, in diesem Haus und im nächsten. Ein einzelner Rückflussverhinderer lässt früher oder später durch; darum werden zwei verlangt.</translation>
</message>
<message>
<source>Part the two waters. Fill the heating by a filling link with a double check valve that is taken off afterwards; feed a cistern through its float valve, above its water.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Trennen Sie die beiden Wasser. Füllen Sie die Heizung durch eine Füllverbindung mit doppeltem Rückflussverhinderer, die danach abgenommen wird; speisen Sie einen Behälter durch sein Schwimmerventil, oberhalb seines Wasserspiegels.</translation>
</message>
<message>
<source>A mains-fed store of more than 15 litres, heated through its coil by a heat source, whose energy cut-out names no motorised valve, or one that cannot do it: a three-port valve, a valve that does not rest shut when its supply fails, or one with a way round it.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher von mehr als 15 Litern, den ein Wärmeerzeuger durch seine Heizschlange erwärmt und dessen Sicherheitstemperaturbegrenzer kein Motorventil nennt oder eines, das es nicht kann: ein Dreiwegeventil, ein Ventil, das bei Stromausfall nicht schließt, oder eines mit einem Weg daran vorbei.</translation>
</message>
<message>
<source>The thermostat is the first guard, the cut-out the second: when the thermostat sticks, the cut-out breaks the supply of a valve, and the valve must then shut by its own spring and stop all heat to the coil. A three-port valve is never shut both ways, and one that stays where it stands shuts nothing.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Der Thermostat ist der erste Wächter, der Begrenzer der zweite: Klemmt der Thermostat, unterbricht der Begrenzer den Strom eines Ventils, und dieses muss dann durch seine eigene Feder schließen und alle Wärme zur Heizschlange anhalten. Ein Dreiwegeventil ist nie in beide Richtungen zu, und eines, das stehen bleibt, wo es steht, schließt nichts.</translation>
</message>
<message>
<source>Put a two-port motorised valve that rests shut in the flow to the coil, after every branch, and let the cut-out break its supply.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Setzen Sie ein stromlos geschlossenes Zweiwege-Motorventil in den Vorlauf zur Heizschlange, hinter jeden Abzweig, und lassen Sie den Begrenzer dessen Strom unterbrechen.</translation>
</message>
<message>
<source>The outlet of a safety valve or of a store's relief valve, built-in ones too, from which no pipe leads on to a discharge end.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Der Austritt eines Sicherheitsventils der Heizung oder eines Speichers, auch eines eingebauten, von dem kein Rohr zum Ende einer Abblaseleitung führt.</translation>
</message>
<message>
<source>When the valve lifts, scalding water or steam comes out with nothing to carry it away: on whoever stands there, on the electrics, through the ceiling below. People then plug the drip, and a plugged relief valve is a bomb.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Öffnet das Ventil, kommt siedend heißes Wasser oder Dampf heraus, und nichts führt es ab: auf den, der dort steht, auf die Elektrik, durch die Decke darunter. Dann verschließt jemand, was tropft, und ein verschlossenes Sicherheitsventil ist eine Bombe.</translation>
</message>
<message>
<source>Run a discharge pipe from the outlet, falling all the way, through a tundish where it serves a store, to a place where hot water can come out at any time without harm.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Führen Sie vom Austritt eine Abblaseleitung mit durchgehendem Gefälle, bei einem Speicher durch einen Ablauftrichter, an einen Ort, wo jederzeit heißes Wasser austreten kann, ohne zu schaden.</translation>
</message>
<message>
<source>Before the tundish, a pipe smaller than the valve's outlet. After it, a pipe smaller than one size above the outlet, or one that grows smaller on its way down. For the heating's safety valve, which has no tundish, any pipe smaller than the outlet, or a reduction on the way.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Vor dem Ablauftrichter ein Rohr, das kleiner ist als der Austritt des Ventils. Danach ein Rohr, das nicht mindestens eine Größe über dem Austritt liegt oder auf dem Weg nach unten kleiner wird. Beim Sicherheitsventil der Heizung, das keinen Ablauftrichter hat, jedes Rohr, das kleiner ist als der Austritt, oder eine Verengung auf dem Weg.</translation>
</message>
<message>
<source>Half of what comes out may be steam, which needs far more room than water. A pipe too small holds the valve back just when it must let everything go, and fills the tundish until it spills.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Die Hälfte dessen, was herauskommt, kann Dampf sein, der weit mehr Raum braucht als Wasser. Ein zu kleines Rohr staut das Ventil gerade dann, wenn es alles loslassen muss, und füllt den Ablauftrichter, bis er überläuft.</translation>
</message>
<message>
<source>Make the pipe before the tundish as large as the outlet, and the one after it at least one size larger (22 mm for a 15 mm outlet), never smaller further down.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Machen Sie das Rohr vor dem Ablauftrichter so groß wie den Austritt und das danach mindestens eine Größe größer (22 mm bei 15 mm Austritt), weiter unten nie kleiner.</translation>
</message>
<message>
<source>Any valve in the discharge of a relief or safety valve, before the tundish or after it: one shut by hand, by a motor or by a thermostat, a secured one too, and any check valve, bypass or reducing valve.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Jedes Ventil in der Abblaseleitung eines Sicherheitsventils, vor oder nach dem Ablauftrichter: eines, das von Hand, von einem Motor oder von einem Thermostat geschlossen wird, auch ein gesichertes, und jeder Rückflussverhinderer, jedes Überströmventil und jeder Druckminderer.</translation>
</message>
<message>
<source>A relief valve is the last thing between too much pressure and a burst. A valve behind it that somebody shuts to stop a drip, or a check valve that sticks, takes that away without a sign.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Ein Sicherheitsventil ist das Letzte, was zwischen zu hohem Druck und einem Bersten steht. Ein Ventil dahinter, das jemand schließt, damit es nicht tropft, oder ein Rückflussverhinderer, der festsitzt, nimmt das ohne jedes Zeichen weg.</translation>
</message>
<message>
<source>Take the valve out of the discharge. Nothing but pipe and a tundish belongs there.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Nehmen Sie das Ventil aus der Abblaseleitung. Nichts als Rohr und ein Ablauftrichter gehört hinein.</translation>
</message>
<message>
<source>A discharge end inside the building; at low level outside or on a roof where people can stand in the way; on a roof, at high level or into a soil stack without what the rules ask of such an end. An end below the grating of a gully is safe as it is.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Das Ende einer Abblaseleitung im Gebäude; im Freien auf niedriger Höhe oder auf einem Dach, wo Personen im Weg stehen können; auf einem Dach, in großer Höhe oder in ein Fallrohr ohne das, was die Regeln von einem solchen Ende verlangen. Ein Ende unter dem Rost eines Ablaufs ist so, wie es ist, gefahrlos.</translation>
</message>
<message>
<source>What comes out may be boiling water and steam, at any hour. It scalds whoever stands there, and softens felt, asphalt and plastic gutters; in a soil stack with a water trap it drives foul air into the house.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Was herauskommt, kann zu jeder Stunde siedendes Wasser und Dampf sein. Es verbrüht, wer dort steht, und erweicht Dachpappe, Asphalt und Kunststoffrinnen; in einem Fallrohr mit Geruchverschluss treibt es faule Luft ins Haus.</translation>
</message>
<message>
<source>End the pipe below the grating of a trapped gully and above its water; or at low level, pointing down, up to 100 mm above the ground, with a guard that leaves it visible; or high up into a metal hopper, 3 m from any plastic gutter. Into a soil stack only by a mechanical seal, on a branch of its own that stands the heat and is marked.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Lassen Sie das Rohr unter dem Rost eines Ablaufs mit Geruchverschluss und über dessen Wasser enden; oder auf niedriger Höhe nach unten gerichtet, bis 100 mm über dem Boden, mit einem Schutz, der es sichtbar lässt; oder hoch oben in einem Metalltrichter, 3 m von jeder Kunststoffrinne entfernt. In ein Fallrohr nur durch einen mechanischen Verschluss, an einem eigenen Abzweig, der die Hitze aushält und gekennzeichnet ist.</translation>
</message>
<message>
<source>Plastic between a store's relief valve and its tundish, marked or not. After the tundish, and in a safety valve's discharge, plastic that is not marked as fit for hot discharge.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Kunststoff zwischen dem Sicherheitsventil eines Speichers und dem Ablauftrichter, gekennzeichnet oder nicht. Nach dem Ablauftrichter und in der Abblaseleitung der Heizung Kunststoff, der nicht als geeignet für heißes Abblasen gekennzeichnet ist.</translation>
</message>
<message>
<source>What comes out may be as hot as 95 °C, mixed with steam. Common plastic sags, comes apart at its joints and pours scalding water where the pipe was meant to lead it away from.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Was herauskommt, kann bis 95 °C heiß und mit Dampf gemischt sein. Gewöhnlicher Kunststoff hängt durch, geht an den Verbindungen auf und gießt siedend heißes Wasser dorthin, wovon das Rohr es wegführen sollte.</translation>
</message>
<message>
<source>Run metal pipe before the tundish. After it, run metal, or plastic shown to stand the temperature and permanently marked so along its length.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Verlegen Sie vor dem Ablauftrichter Metallrohr. Danach Metall oder Kunststoff, der die Temperatur nachweislich aushält und auf seiner Länge dauerhaft so gekennzeichnet ist.</translation>
</message>
<message>
<source>After a store's tundish, and anywhere in the discharge of the heating's safety valve or of a valve without a tundish, a pipe that rises on its way to the end, or falls less than 1 in 200. Of a pipe that drops straight down below a tundish, what comes after the drop counts. Before a store's tundish only a pipe that is said to rise is flagged. Exactly 1 in 200 passes.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Nach dem Ablauftrichter eines Speichers und überall in der Abblaseleitung der Heizung oder eines Ventils ohne Ablauftrichter ein Rohr, das auf dem Weg zum Ende steigt oder weniger als 1 zu 200 fällt. Bei einem Rohr, das unter dem Ablauftrichter gerade hinabführt, zählt, was nach dem Fallstück kommt. Vor dem Ablauftrichter eines Speichers wird nur ein Rohr beanstandet, das laut Angabe steigt. Genau 1 zu 200 genügt.</translation>
</message>
<message>
<source>Water stands in a pipe that rises or lies level. It holds back the next discharge, freezes at an outside wall and closes the pipe with ice, and rots the seat of the valve above it.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>In einem steigenden oder waagerechten Rohr steht Wasser. Es hemmt das nächste Abblasen, gefriert an einer Außenwand und verschließt das Rohr mit Eis, und es zerfrisst den Sitz des Ventils darüber.</translation>
</message>
<message>
<source>Let the pipe fall all the way to its end, at least 5 mm in each metre, so that it empties itself.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Lassen Sie das Rohr bis zu seinem Ende durchweg fallen, mindestens 5 mm je Meter, sodass es von selbst leer läuft.</translation>
</message>
<message>
<source>After the tundish of a store's relief valve, a run whose resistance (its length, and an allowance for each bend) is above the table's limit for its bore. A tee entered or left by its branch counts as a bend. Pipes of mixed bore count by the smallest. Exactly the limit passes.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Nach dem Ablauftrichter eines Speicher-Sicherheitsventils eine Strecke, deren Widerstand (ihre Länge und ein Zuschlag je Bogen) über der Grenze der Tabelle für ihren Durchmesser liegt. Ein durch den Abzweig durchströmtes T-Stück zählt als Bogen. Bei gemischten Durchmessern zählt der kleinste. Genau die Grenze genügt.</translation>
</message>
<message>
<source>Every metre and every bend holds back the mix of steam and water that comes out. Past the limit it backs up and spills from the tundish, scalding, inside the house.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Jeder Meter und jeder Bogen hemmt das Gemisch aus Dampf und Wasser, das herauskommt. Jenseits der Grenze staut es sich und läuft siedend heiß aus dem Ablauftrichter, mitten im Haus.</translation>
</message>
<message>
<source>Run the pipe one size larger from the tundish to the end, or shorten it, or take bends out. Each further size carries 9 m more.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Führen Sie das Rohr vom Ablauftrichter bis zum Ende eine Größe größer aus, kürzen Sie es, oder nehmen Sie Bögen heraus. Jede weitere Größe trägt 9 m mehr.</translation>
</message>
<message>
<source>Heating pipework between valves that can be shut, more than a metre of pipe in all, with no drain on it, or with none at its lowest point: a part of it lies more than 0.1 m below every drain. A check valve or a bypass does not part a stretch: only what can be shut does. The pipe between an open vent or a cistern and a valve in it is not asked for a drain: it is the valve that is wrong.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Heizrohrnetz zwischen Ventilen, die geschlossen werden können, insgesamt mehr als ein Meter Rohr, ohne Entleerung oder ohne eine an seinem Tiefpunkt: Ein Teil liegt mehr als 0,1 m unter jeder Entleerung. Ein Rückflussverhinderer oder ein Überströmventil teilt kein Stück ab: Das tut nur, was geschlossen werden kann. Für das Rohr zwischen einer offenen Entlüftung oder einem Behälter und einem Ventil darin wird keine Entleerung verlangt: Falsch ist dort das Ventil.</translation>
</message>
<message>
<source>Sooner or later a valve, a radiator or the heat source must come out. Water that cannot be let out beforehand comes out over the floor, and water left lying in a low place freezes and splits the tube when the house stands empty in winter.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Früher oder später muss ein Ventil, ein Heizkörper oder der Wärmeerzeuger heraus. Wasser, das sich vorher nicht ablassen lässt, läuft über den Boden, und Wasser, das in einer tiefen Stelle stehen bleibt, gefriert und sprengt das Rohr, wenn das Haus im Winter leer steht.</translation>
</message>
<message>
<source>Fit a drain at the lowest point of each stretch that valves can shut off, and on each drop to radiators that are fed from above.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie am Tiefpunkt jedes Stücks, das Ventile absperren können, eine Entleerung ein, und an jeder Fallleitung zu Heizkörpern, die von oben versorgt werden.</translation>
</message>
<message>
<source>An emitter, a store's coil or an exchanger with no loop from a pump through a heat source (or the exchanger that heats its water), through it and back, that passes nothing twice; all valves open. Gravity does for a pump where the heat is uncontrolled, and for a store's coil on open-vented water. A loop from leg to leg of a diverting three-port valve is none: it opens one leg at a time. Nor is one that passes a bypass valve: it stands shut until other ways are.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Eine Heizfläche, die Heizschlange eines Speichers oder ein Wärmeübertrager ohne Umlauf von einer Pumpe durch einen Wärmeerzeuger (oder den Wärmeübertrager, der ihr Wasser erwärmt), hindurch und zurück, der nichts zweimal durchläuft; alle Ventile offen. Statt einer Pumpe genügt die Schwerkraft, wo die Wärme nicht regelbar ist, und für die Heizschlange eines Speichers an offenem Wasser. Ein Umlauf von Weg zu Weg eines umschaltenden Dreiwegeventils ist keiner: Es öffnet immer nur einen Weg. Ebenso wenig einer durch ein Überströmventil: es bleibt zu, bis andere Wege zu sind.</translation>
</message>
<message>
<source>Water goes round or it does not go at all. A radiator that hangs on a branch by both its pipes, or behind a check valve that faces the wrong way, fills with water and stays cold.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Wasser läuft um, oder es fließt gar nicht. Ein Heizkörper, der mit beiden Rohren an einem Abzweig hängt oder hinter einem verkehrten Rückflussverhinderer, füllt sich mit Wasser und bleibt kalt.</translation>
</message>
<message>
<source>Lead its flow to the flow pipe and its return to the return pipe, and see that every pump and check valve on the way faces the way the water must go. On a three-port valve the port ab is the one that the water of both legs comes in by, or goes out by.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Führen Sie seinen Vorlauf an das Vorlaufrohr und seinen Rücklauf an das Rücklaufrohr, und sehen Sie nach, dass jede Pumpe und jeder Rückflussverhinderer auf dem Weg in die Richtung zeigt, in die das Wasser muss. An einem Dreiwegeventil ist AB der Anschluss, durch den das Wasser beider Wege eintritt oder austritt.</translation>
</message>
<message>
<source>In a situation that calls it, an emitter or coil gets less than 90 % of its design flow by the solved network. Where what is called wants more heat than the heat sources give, every design is cut alike; beside a coil whose power has no number it is not judged. Thermostatic heads are taken as open, and valves without a number as set to the design flow where they can give it.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>In einem Betriebszustand, in dem sie gefordert ist, bekommt eine Heizfläche oder Heizschlange nach dem gelösten Netz weniger als 90 % ihres Auslegungsvolumenstroms. Wo alles Geforderte mehr Wärme will, als die Wärmeerzeuger geben, ist jede Auslegung gleich gekürzt; neben einer Heizschlange ohne Leistungsangabe wird nicht beurteilt. Thermostatköpfe gelten als offen, Ventile ohne Zahl als auf den Auslegungsvolumenstrom eingestellt, wo sie ihn geben können.</translation>
</message>
<message>
<source>Water takes the easy way. An emitter far off, or beside one that lets far more through, is left with too little, and its room stays cold while others overheat.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Wasser nimmt den leichten Weg. Eine entfernte Heizfläche, oder eine neben einer, die viel mehr durchlässt, bekommt zu wenig, und ihr Raum bleibt kalt, während andere zu warm werden.</translation>
</message>
<message>
<source>Set or add balancing valves on the ways that take more than their share; if all are short, the pump is too weak or the pipes too narrow.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Stellen Sie Strangregulierventile auf den Wegen ein, die mehr als ihren Anteil nehmen, oder bauen Sie dort welche ein; fehlt es allen, ist die Pumpe zu schwach, oder die Rohre sind zu eng.</translation>
</message>
<message>
<source>A mains-fed store whose water reaches no expansion relief valve by a way pressure can always take with the valves open, and that has none built in. A check valve or a reducing valve on the only way does not count as one. The valve inside an inlet group counts.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher, dessen Wasser auf einem Weg, den der Druck bei offenen Ventilen immer nehmen kann, kein Ausdehnungs-Sicherheitsventil erreicht und der keines eingebaut hat. Ein Rückflussverhinderer oder Druckminderer auf dem einzigen Weg gilt nicht als eines. Das Ventil in einer Sicherheitsgruppe zählt.</translation>
</message>
<message>
<source>The check valve at the inlet shuts the swelling water in with the store. When the vessel has lost its charge, or the reducing valve lets by, pressure climbs at every heating. The expansion relief valve lets that little water go on the cold side, long before the store itself is in danger.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Der Rückflussverhinderer am Eintritt schließt das Ausdehnungswasser mit dem Speicher ein. Hat das Ausdehnungsgefäß seinen Vordruck verloren oder lässt der Druckminderer durch, steigt der Druck bei jedem Aufheizen. Das Ausdehnungs-Sicherheitsventil lässt dieses wenige Wasser auf der Kaltseite ab, lange bevor der Speicher selbst in Gefahr ist.</translation>
</message>
<message>
<source>Fit an expansion relief valve, or an inlet group, on the cold feed between the check valve and the store, with nothing between it and the store.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie in den Kaltwasserzulauf zwischen Rückflussverhinderer und Speicher ein Ausdehnungs-Sicherheitsventil oder eine Sicherheitsgruppe ein, mit nichts zwischen ihm und dem Speicher.</translation>
</message>
<message>
<source>Sealed heating water whose fill pressure pushes less water into the vessels than the reserve they should hold when all is cold: a fifth of a vessel up to 15 litres; of larger ones 0.5 % of the circuit's water, and 3 litres at least. So 12 litres charged to 0.8 bar want a fill of 1.25 bar: the 1 bar that is often taken out of habit leaves half of the reserve. It is advice. A fill pressure that is no higher than the charge is told by the check of the charge, and vessels that are too small by the check of their size.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Geschlossenes Heizwasser, dessen Fülldruck weniger Wasser in die Ausdehnungsgefäße drückt als die Vorlage, die sie kalt enthalten sollen: ein Fünftel eines Gefäßes bis 15 Liter; bei größeren 0,5 % des Kreiswassers und mindestens 3 Liter. So verlangen 12 Liter mit 0,8 bar Vordruck einen Fülldruck von 1,25 bar: Das eine bar, das man oft aus Gewohnheit nimmt, lässt die Hälfte der Vorlage fehlen. Es ist eine Empfehlung. Ein Fülldruck, der nicht höher ist als der Vordruck, ist Sache der Prüfung des Vordrucks, und zu kleine Gefäße sind Sache der Prüfung ihrer Größe.</translation>
</message>
<message>
<source>Every sealed circuit loses a little water: air is let out, a joint weeps, a valve drips. The reserve in the vessel makes up for it. Where there is next to none, the pressure is gone after the first bleeding of a radiator, and the house is cold until somebody fills the circuit again.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Jeder geschlossene Kreis verliert etwas Wasser: Luft wird abgelassen, eine Verbindung schwitzt, ein Ventil tropft. Die Wasservorlage im Ausdehnungsgefäß gleicht das aus. Wo es fast keine gibt, ist der Druck nach dem ersten Entlüften eines Heizkörpers weg, und das Haus ist kalt, bis jemand nachfüllt.</translation>
</message>
<message>
<source>Fill the cold circuit to the pressure named, as long as that leaves room for the swell; where it does not, charge the vessel less or fit a larger one.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Füllen Sie den kalten Kreis auf den genannten Druck, solange das Raum für die Ausdehnung lässt; wo nicht, senken Sie den Vordruck oder bauen Sie ein größeres Gefäß ein.</translation>
</message>
<message>
<source>Sealed heated water with no filling link, none being built into the heat source, and no cistern that tops it up through a check valve. A link whose water can only leave the circuit, because a check valve stands the wrong way round, fills nothing.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Geschlossenes erwärmtes Wasser ohne Füllverbindung, auch ohne eine in den Wärmeerzeuger eingebaute, und ohne Behälter, der es durch einen Rückflussverhinderer nachspeist. Eine Verbindung, deren Wasser den Kreis nur verlassen kann, weil ein Rückflussverhinderer verkehrt herum sitzt, füllt nichts.</translation>
</message>
<message>
<source>A sealed circuit loses a little water through joints, air vents and each time a radiator is bled. Where there is no proper link, somebody in time fills it by a hose from the nearest tap, and heating water can then get into what people drink.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein geschlossener Kreis verliert durch Verbindungen, Entlüfter und bei jedem Entlüften eines Heizkörpers etwas Wasser. Wo keine richtige Füllverbindung ist, füllt ihn irgendwann jemand mit einem Schlauch vom nächsten Hahn, und dann kann Heizwasser in das gelangen, was Menschen trinken.</translation>
</message>
<message>
<source>Fit a filling link with a double check valve from the cold main to the return, with a valve at each end, to be taken off after filling.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie eine Füllverbindung mit doppeltem Rückflussverhinderer vom Kaltwasser zum Rücklauf ein, mit einem Ventil an jedem Ende, die nach dem Füllen abgenommen wird.</translation>
</message>
<message>
<source>A filling link that is stated to stay connected after filling, on water that is not open-vented.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Eine Füllverbindung, die laut Angabe nach dem Füllen verbunden bleibt, an Wasser, das nicht offen ist.</translation>
</message>
<message>
<source>Two valves are then all that parts heating water, with what is dissolved in it, from drinking water, and valves let by. A link that lets by also fills the circuit day and night: the pressure climbs until the safety valve weeps, and leaks stay hidden because the main makes up for them.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Dann trennen nur zwei Ventile das Heizwasser, mit allem, was darin gelöst ist, vom Trinkwasser, und Ventile lassen durch. Eine undichte Verbindung füllt den Kreis auch Tag und Nacht: Der Druck steigt, bis das Sicherheitsventil tropft, und Lecks bleiben verborgen, weil der Hausanschluss sie ausgleicht.</translation>
</message>
<message>
<source>Take the hose off after filling and cap its ends; where the circuit must top itself up, use an arrangement that the water supplier accepts for that fluid category.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Nehmen Sie den Schlauch nach dem Füllen ab und setzen Sie Kappen auf seine Enden; wo der Kreis sich selbst nachspeisen muss, verwenden Sie eine Einrichtung, die der Wasserversorger für diese Flüssigkeitskategorie zulässt.</translation>
</message>
<message>
<source>A filling link that is stated to have no double check valve, on water that is not open-vented.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Eine Füllverbindung, die laut Angabe keinen doppelten Rückflussverhinderer hat, an Wasser, das nicht offen ist.</translation>
</message>
<message>
<source>While the link is on, a drop of pressure in the main (a burst in the street, a fire engine) pulls heating water back into the pipes people drink from. Heating water of a dwelling is fluid category 3; a single check valve is not enough for it, since one bit of grit holds it open.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Solange die Verbindung sitzt, zieht ein Druckabfall im Hausanschluss (ein Rohrbruch in der Straße, ein Löschfahrzeug) Heizwasser in die Rohre zurück, aus denen Menschen trinken. Heizwasser einer Wohnung ist Flüssigkeitskategorie 3; ein einzelner Rückflussverhinderer genügt dafür nicht, da ein Körnchen ihn offen hält.</translation>
</message>
<message>
<source>Fit a double check valve on the supply side of the link, between it and the main.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie auf der Zulaufseite der Verbindung, zwischen ihr und dem Hausanschluss, einen doppelten Rückflussverhinderer ein.</translation>
</message>
<message>
<source>Pumped heating water with no dirt separator (in-line filter) on it. A strainer is no filter: it keeps grit from a valve and lets through the fine black sludge. Water that moves by gravity alone is not asked for one.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Gepumptes Heizwasser ohne Schlammabscheider (Filter im Rohr). Ein Schmutzfänger ist kein Filter: Er hält Körner von einem Ventil ab und lässt den feinen schwarzen Schlamm durch. Von Wasser, das allein durch Schwerkraft umläuft, wird keiner verlangt.</translation>
</message>
<message>
<source>Steel radiators rust a little from within, and the fine magnetic sludge ends where the ways are narrowest: the heat source's exchanger, the pump's bearings, the thermostatic valves. A filter takes it out of the water, where it can be let off once a year.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Heizkörper aus Stahl rosten von innen ein wenig, und der feine magnetische Schlamm sammelt sich an den engsten Stellen: im Wärmeübertrager des Wärmeerzeugers, in den Lagern der Pumpe, in den Thermostatventilen. Ein Filter nimmt ihn aus dem Wasser, und einmal im Jahr wird er abgelassen.</translation>
</message>
<message>
<source>Cut a dirt separator into the return, close by the heat source, after the last emitter's return, with valves by which it can be cleaned.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Setzen Sie einen Schlammabscheider in den Rücklauf, nahe am Wärmeerzeuger, hinter dem Rücklauf der letzten Heizfläche, mit Ventilen, mit denen er gereinigt werden kann.</translation>
</message>
<message>
<source>A pump, check valve, bypass valve, blending valve or pressure reducing valve that no loop takes in the direction of its arrow, though one would if it were turned round. What gives the direction is the heat source, the main on its way to the taps, and the secondary return of a store; behind a separator, that hot water leaves it by the load's flow and comes back by the load's return. A part that could rightly face either way is left alone.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Eine Pumpe, ein Rückflussverhinderer, ein Überströmventil, ein Mischventil oder ein Druckminderer, durch den kein Umlauf in Pfeilrichtung führt, obwohl es umgedreht einer täte. Die Richtung geben der Wärmeerzeuger, der Hausanschluss auf dem Weg zu den Hähnen und die Zirkulation eines Speichers; hinter einer hydraulischen Weiche, dass heißes Wasser sie am Vorlauf der Verbraucher verlässt und an deren Rücklauf zurückkommt. Ein Bauteil, das zu Recht in beide Richtungen zeigen könnte, bleibt unbeanstandet.</translation>
</message>
<message>
<source>The arrow on the body is easy to miss in a dark cupboard. A check valve the wrong way round shuts the pipe for good; a bypass the wrong way round never opens; a pump drives against the stream.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Den Pfeil auf dem Gehäuse übersieht man in einem dunklen Schrank leicht. Ein verkehrter Rückflussverhinderer verschließt das Rohr für immer; ein verkehrtes Überströmventil öffnet nie; eine Pumpe arbeitet gegen den Strom.</translation>
</message>
<message>
<source>Turn the part round, so that its arrow points the way the water goes.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Drehen Sie das Bauteil um, sodass sein Pfeil dorthin zeigt, wohin das Wasser fließt.</translation>
</message>
<message>
<source>A heating zone whose highest flow temperature is below the flow's, with a loop from the heat source to it that passes no blending valve set to that temperature or less. A zone whose limit is not stated is not judged.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Heizkreis, dessen höchste Vorlauftemperatur unter der des Vorlaufs liegt, mit einem Umlauf vom Wärmeerzeuger zu ihm, der durch kein auf diese Temperatur oder weniger eingestelltes Mischventil führt. Ein Heizkreis, dessen Grenze nicht angegeben ist, wird nicht beurteilt.</translation>
</message>
<message>
<source>Floor pipes lie in screed. Water at radiator temperature cracks it, lifts the boards and burns bare feet; some floor pipe is not made for it either.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Fußbodenrohre liegen im Estrich. Wasser mit Heizkörpertemperatur lässt ihn reißen, hebt Dielen und verbrennt bloße Füße; manches Fußbodenrohr ist auch nicht dafür gebaut.</translation>
</message>
<message>
<source>Put a blending valve, set to the zone's limit or less, in the flow to the zone before its pump, with its cold port on the zone's return.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Setzen Sie in den Vorlauf zum Heizkreis, vor dessen Pumpe, ein auf seine Grenze oder weniger eingestelltes Mischventil, mit dem Kaltanschluss am Rücklauf des Heizkreises.</translation>
</message>
<message>
<source>A store whose weight when filled, over the round footprint it stands on, is more than the floor is stated to carry (`design.floor_capacity_kn_m2`). Always advice: the program reckons with one stated number and knows nothing of joists, spans, or what else stands there. A vented store's drawing data hold no diameter and no weight: it is not judged.</source>
<extracomment>checks/lessons/structure</extracomment>
<translation>Ein Speicher, dessen Gewicht im gefüllten Zustand auf dem Kreis, auf dem er steht, größer ist als die angegebene Tragfähigkeit des Bodens (`design.floor_capacity_kn_m2`). Immer nur Empfehlung: Das Programm rechnet mit einer angegebenen Zahl und weiß nichts von Balken, Spannweiten und dem, was sonst dort steht. Die Angaben eines offenen Speichers enthalten weder Durchmesser noch Gewicht: Er wird nicht beurteilt.</translation>
</message>
<message>
<source>A litre of water weighs a kilogram. A store of 210 litres weighs a quarter of a tonne, on a circle of 55 cm: some 10 kN on each square metre of it, while floors of dwellings are usually reckoned for 1.5. A floor that gives way takes the pipes with it.</source>
<extracomment>checks/lessons/structure</extracomment>
<translation>Ein Liter Wasser wiegt ein Kilogramm. Ein Speicher von 210 Litern wiegt eine Vierteltonne, auf einem Kreis von 55 cm: etwa 10 kN auf jedem Quadratmeter davon, während Wohnungsböden gewöhnlich für 1,5 bemessen sind. Ein Boden, der nachgibt, reißt die Rohre mit.</translation>
</message>
<message>
<source>Spread the load with a base that rests on several joists, stand the store over a load-bearing wall, or choose another place; have a competent person confirm the structure in any case.</source>
<extracomment>checks/lessons/structure</extracomment>
<translation>Verteilen Sie die Last mit einer Platte, die auf mehreren Balken ruht, stellen Sie den Speicher über eine tragende Wand oder wählen Sie einen anderen Platz; lassen Sie das Tragwerk in jedem Fall von einem Fachkundigen bestätigen.</translation>
</message>
<message>
<source>Sealed heated water that reaches no pressure gauge, none being built into the heat source. Water behind a heat exchanger is a body of its own and needs its own gauge.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Geschlossenes erwärmtes Wasser, das kein Manometer erreicht, auch keines im Wärmeerzeuger. Wasser hinter einem Wärmeübertrager ist ein eigenes Wasser und braucht ein eigenes Manometer.</translation>
</message>
<message>
<source>The gauge is the only thing that shows whether a sealed circuit is filled, whether it is losing water, and whether the vessel still takes up the swell: a needle that swings from low when cold to the safety valve's setting when hot tells of a dead vessel. Without one nobody can fill it right.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Nur das Manometer zeigt, ob ein geschlossener Kreis gefüllt ist, ob er Wasser verliert und ob das Ausdehnungsgefäß die Ausdehnung noch aufnimmt: Ein Zeiger, der von niedrig im Kalten bis zum Ansprechdruck des Sicherheitsventils im Heißen ausschlägt, verrät ein totes Gefäß. Ohne Manometer kann niemand richtig füllen.</translation>
</message>
<message>
<source>Fit a gauge that covers at least 0 to 4 bar where it can be read from the filling point, best at the vessel's connection.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie ein Manometer ein, das mindestens 0 bis 4 bar anzeigt und von der Füllstelle aus abzulesen ist, am besten am Anschluss des Ausdehnungsgefäßes.</translation>
</message>
<message>
<source>A switched heat source that may be called when no thermostat calls: because a programmer alone calls it, or because something it heats is not held by a thermostat that acts on a motor valve, a pump or the heat source itself. Thermostatic heads alone hold nothing: they cannot tell the heat source to stop. One emitter left open on purpose, as a way round for the pump, is not meant. A drawing without thermostats is judged as a house without them.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein abschaltbarer Wärmeerzeuger, der angefordert sein kann, obwohl kein Thermostat Wärme fordert: weil allein eine Zeitschaltuhr ihn anfordert, oder weil etwas, das er heizt, nicht von einem Thermostat gehalten wird, der auf ein Motorventil, eine Pumpe oder den Wärmeerzeuger selbst wirkt. Thermostatköpfe allein halten nichts: Sie können dem Wärmeerzeuger nicht sagen, dass er aufhören soll. Eine einzelne Heizfläche, die mit Absicht als Umweg für die Pumpe offen ist, ist nicht gemeint. Eine Zeichnung ohne Thermostate wird wie ein Haus ohne sie beurteilt.</translation>
</message>
<message>
<source>When all the rooms are warm and nothing tells the heat source so, it goes on heating its own few litres of water over and over, all day, for nothing. That wastes fuel and wears it out.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Sind alle Räume warm und nichts sagt es dem Wärmeerzeuger, erwärmt er seine paar Liter Wasser immer wieder, den ganzen Tag, für nichts. Das verschwendet Brennstoff und verschleißt ihn.</translation>
</message>
<message>
<source>Let a thermostat act on the valve or pump of every zone and every store, and let the heat source and the pump be called by the end switches of those valves and not by the programmer alone.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Lassen Sie einen Thermostat auf das Ventil oder die Pumpe jedes Heizkreises und jedes Speichers wirken, und lassen Sie Wärmeerzeuger und Pumpe von den Endschaltern dieser Ventile anfordern und nicht allein von der Zeitschaltuhr.</translation>
</message>
<message>
<source>A heat source whose heat cannot be switched off, with no loop through an emitter or a store's coil that works without a pump and that nothing can shut. Any valve spoils it: a motor valve, a thermostatic head, a hand valve on the emitter itself, a secured one. So does a pump in the way, and a check valve: it stops water that only its warmth moves. A heating zone is a group of emitters that can each be shut by hand. A plain pipe is no heat leak: it gives no heat away. Two loops through the two legs of one three-port valve cannot both be shut by it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Wärmeerzeuger, dessen Wärme sich nicht abschalten lässt, ohne einen Umlauf durch eine Heizfläche oder die Heizschlange eines Speichers, der ohne Pumpe arbeitet und den nichts schließen kann. Jedes Ventil verdirbt ihn: ein Motorventil, ein Thermostatkopf, ein Handventil an der Heizfläche selbst, auch ein gesichertes. Ebenso eine Pumpe im Weg und ein Rückflussverhinderer: Er hält Wasser auf, das nur seine Wärme bewegt. Ein Heizkreis ist eine Gruppe von Heizflächen, die sich alle von Hand schließen lassen. Ein bloßes Rohr führt keine Wärme ab: Es gibt keine weg. Zwei Umläufe durch die beiden Wege eines Dreiwegeventils kann dieses nicht beide schließen.</translation>
</message>
<message>
<source>A fire cannot be turned off. When the power fails or every room is warm, the pumps stop and the valves shut, and the fire burns on. If its heat can rise by itself to a radiator or a coil that is always open, nothing happens; if it cannot, the water boils within minutes.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Feuer lässt sich nicht abstellen. Fällt der Strom aus oder ist jeder Raum warm, stehen die Pumpen, die Ventile schließen, und das Feuer brennt weiter. Kann seine Wärme von selbst zu einem immer offenen Heizkörper oder einer Heizschlange aufsteigen, geschieht nichts; kann sie es nicht, siedet das Wasser binnen Minuten.</translation>
</message>
<message>
<source>Lead a loop of 28 mm pipe that rises all the way from the heat source to a radiator without valves or to a store's coil above it, and back, with no pump and no valve of any kind in it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Führen Sie einen Umlauf aus 28-mm-Rohr, der durchweg ansteigt, vom Wärmeerzeuger zu einem Heizkörper ohne Ventile oder zur Heizschlange eines Speichers darüber und zurück, ohne Pumpe und ohne jedes Ventil.</translation>
</message>
<message>
<source>While heating or hot water is called, an emitter or coil that is not called carries flow by the solved network, forward or backward. Thermostatic heads are taken as open; a zone without any control counts as called. Water that circulates by its warmth alone is not solved.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Während Heizung oder Warmwasser gefordert ist, fließt nach dem gelösten Netz Wasser durch eine Heizfläche oder Heizschlange, die nicht gefordert ist, vorwärts oder rückwärts. Thermostatköpfe gelten als offen; ein Heizkreis ohne jeden Regler gilt als gefordert. Wasser, das allein durch seine Wärme umläuft, wird nicht gerechnet.</translation>
</message>
<message>
<source>Two circuits that share a pipe can push water through one another. Radiators grow warm in summer when the store is heated, heat is wasted, and backward flow blows air and hammers valves.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Zwei Kreise, die sich ein Rohr teilen, können Wasser durcheinander drücken. Heizkörper werden im Sommer warm, wenn der Speicher geladen wird, Wärme wird vergeudet, und rückwärts strömendes Wasser bläst Luft vor sich her und lässt Ventile schlagen.</translation>
</message>
<message>
<source>Part the circuits: a check valve in the one that is pushed, a zone valve that shuts, or its return joined at a place where no other pump raises the pressure.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Trennen Sie die Kreise: durch einen Rückflussverhinderer in dem, der gedrückt wird, durch ein schließendes Zonenventil oder durch einen Rücklauf, der dort angeschlossen ist, wo keine andere Pumpe den Druck hebt.</translation>
</message>
<message>
<source>Pipes in a loop whose rises do not bring you back to the height you began at within 0.1 m; two parts whose heights are given, and pipes between them whose rises say otherwise by more than that; a pipe that rises or falls by more than its length.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Rohre in einem Ring, deren Anstiege nicht auf 0,1 m genau zu der Höhe zurückführen, bei der man begonnen hat; zwei Bauteile mit angegebenen Höhen und Rohre dazwischen, deren Anstiege um mehr als das etwas anderes sagen; ein Rohr, das um mehr als seine Länge steigt oder fällt.</translation>
</message>
<message>
<source>One of the numbers is wrong, and a height or a rise decides whether a vent rises all the way, whether a discharge falls, and what pressure there is at each point. Every part stands at one height above the sheet's datum, and a pipe's rise is told between the parts at its two ends, from its first end to its second: often just the sign is the wrong way round.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Eine der Zahlen ist falsch, und eine Höhe oder ein Anstieg entscheidet, ob eine Entlüftung durchweg steigt, ob eine Abblaseleitung fällt und welcher Druck an jeder Stelle herrscht. Jedes Bauteil liegt auf einer einzigen Höhe über der Bezugshöhe des Blatts, und der Anstieg eines Rohrs gilt zwischen den Bauteilen an seinen Enden, vom ersten Ende zum zweiten: Oft ist nur das Vorzeichen verkehrt.</translation>
</message>
<message>
<source>Go round the pipes named and correct the height, the rise or the length that is wrong.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Gehen Sie die genannten Rohre durch und berichtigen Sie die Höhe, den Anstieg oder die Länge, die falsch ist.</translation>
</message>
<message>
<source>An outlet whose hot water must push out more metres of uninsulated pipe than the guidance gives for its diameter: 20 m up to 12 mm, 12 m up to 22 mm, 8 m up to 28 mm, 3 m above. The pipe counts from what gives the hot water, or from the nearest place that a secondary return keeps hot. Insulated pipe does not count. Where diameters differ, the largest governs; of several ways, the best. Exactly the limit passes.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Eine Zapfstelle, deren warmes Wasser mehr Meter ungedämmtes Rohr ausschieben muss, als die Richtlinie bei diesem Durchmesser zugesteht: 20 m bis 12 mm, 12 m bis 22 mm, 8 m bis 28 mm, darüber 3 m. Das Rohr zählt von dem an, was das warme Wasser gibt, oder von der nächsten Stelle, die eine Zirkulation warm hält. Gedämmtes Rohr zählt nicht. Wo die Durchmesser verschieden sind, gilt der größte; von mehreren Wegen der beste. Genau die Grenze genügt.</translation>
</message>
<message>
<source>All the water in that pipe has gone cold since the tap was last opened. It is run to waste while somebody waits, with the heat that went into it; and it stands lukewarm in between, as legionella likes it.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Das ganze Wasser in diesem Rohr ist kalt geworden, seit der Hahn zuletzt offen war. Es läuft in den Abfluss, während jemand wartet, samt der Wärme darin; und dazwischen steht es lauwarm da, wie Legionellen es mögen.</translation>
</message>
<message>
<source>Insulate the pipe, run it shorter or in a smaller diameter, or bring a secondary return near the outlet.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Dämmen Sie das Rohr, führen Sie es kürzer oder in kleinerem Durchmesser, oder bringen Sie eine Zirkulation nahe an die Zapfstelle.</translation>
</message>
<message>
<source>A store whose water can get hotter than 80 °C (its thermostat is set above it, or heat reaches its coil that no store thermostat stops: uncontrolled heat, or a heat source whose own limit is above it) and that feeds an outlet by some way without a blending valve set to 60 °C or less.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Ein Speicher, dessen Wasser heißer als 80 °C werden kann (sein Thermostat steht darüber, oder zu seiner Heizschlange gelangt Wärme, die kein Speicherthermostat abstellt: nicht regelbare Wärme oder ein Wärmeerzeuger, dessen eigene Grenze darüber liegt) und der auf irgendeinem Weg ohne ein auf 60 °C oder weniger eingestelltes Mischventil eine Zapfstelle speist.</translation>
</message>
<message>
<source>Water above 80 °C scalds at once, and it comes out of every tap, in spurts of steam where the pressure drops. Most taps, hoses and plastic pipes are not made for it either.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Wasser über 80 °C verbrüht sofort, und es kommt aus jedem Hahn, in Dampfstößen, wo der Druck abfällt. Die meisten Hähne, Schläuche und Kunststoffrohre sind auch nicht dafür gebaut.</translation>
</message>
<message>
<source>Fit a blending valve set to 60 °C in the store's hot outlet, before the first branch; set the thermostat lower, and give every heat source a valve that the store's thermostat shuts.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Bauen Sie in den Warmwasseraustritt des Speichers, vor dem ersten Abzweig, ein auf 60 °C eingestelltes Mischventil ein; stellen Sie den Thermostat niedriger, und geben Sie jedem Wärmeerzeuger ein Ventil, das der Speicherthermostat schließt.</translation>
</message>
<message>
<source>An outlet at which, wide open, the water that has gone cold in the pipe takes longer to run out than the rule book allows before hot water comes: 30 seconds. It counts from what gives the hot water, or from where a secondary return keeps it hot, by the way that holds least. An outlet of which the drawing does not say what is drawn there (`other`) is left out.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Eine Zapfstelle, an der, ganz geöffnet, das im Rohr erkaltete Wasser länger zum Ablaufen braucht, als das Regelwerk erlaubt, bevor warmes Wasser kommt: 30 Sekunden. Gezählt wird von dem an, was das warme Wasser gibt, oder von dort, wo eine Zirkulation es warm hält, auf dem Weg mit dem geringsten Inhalt. Eine Zapfstelle, von der die Zeichnung nicht sagt, was dort gezapft wird (`other`), bleibt außer Betracht.</translation>
</message>
<message>
<source>Whoever opens the tap lets that water run down the drain, with the heat it once had, several times a day. And pipe that is neither hot nor cold between times is where legionella grows.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Wer den Hahn öffnet, lässt dieses Wasser in den Abfluss laufen, samt der Wärme, die es einmal hatte, mehrmals am Tag. Und in Rohr, das zwischendurch weder heiß noch kalt ist, wachsen Legionellen.</translation>
</message>
<message>
<source>Run the pipe shorter or in a smaller size, or bring a secondary return near the outlet.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Führen Sie das Rohr kürzer oder in kleinerer Größe, oder bringen Sie eine Zirkulation nahe an die Zapfstelle.</translation>
</message>
<message>
<source>A store with an immersion heater that has no cut-out besides its thermostat. Stores of 15 litres or less are outside this rule.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein Speicher mit einem Elektro-Heizstab, der außer seinem Thermostat keinen Begrenzer hat. Speicher bis 15 Liter fallen nicht unter diese Regel.</translation>
</message>
<message>
<source>An immersion thermostat that sticks goes on heating until the water boils. In a mains-fed store that builds pressure without end; in a vented one it has sent boiling water into a plastic cistern, which gave way.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Klemmt der Thermostat eines Heizstabs, heizt dieser weiter, bis das Wasser siedet. In einem geschlossenen Speicher baut das ohne Ende Druck auf; aus einem offenen ist dabei schon siedendes Wasser in einen Kunststoffbehälter gelaufen, der nachgab.</translation>
</message>
<message>
<source>Fit an immersion heater with a cut-out that must be reset by hand.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie einen Elektro-Heizstab mit einem Begrenzer ein, der von Hand zu entriegeln ist.</translation>
</message>
<message>
<source>Two or more parts or controls of the drawing that bear the same label. Capitals and blanks tell no two apart; parts without a label are not judged.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Zwei oder mehr Bauteile oder Regler der Zeichnung mit derselben Bezeichnung. Groß- und Kleinschreibung und Leerzeichen unterscheiden nichts; Bauteile ohne Bezeichnung werden nicht beurteilt.</translation>
</message>
<message>
<source>Findings, the parts list and whoever stands before the plant call a part by its label. If two bear the same, the wrong valve is shut.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Befunde, die Stückliste und jeder, der vor der Anlage steht, nennen ein Bauteil bei seiner Bezeichnung. Tragen zwei dieselbe, wird das falsche Ventil geschlossen.</translation>
</message>
<message>
<source>Give each a label of its own: a number, a room or a side is enough.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Geben Sie jedem eine eigene Bezeichnung: Eine Zahl, ein Raum oder eine Seite genügt.</translation>
</message>
<message>
<source>A main whose running flow is below the design flow of the outlets it feeds, by their loading units; or whose running pressure, less the height to an outlet, is below 1 bar there; or that feeds a mains-fed store with less than 1.5 bar or 20 l/min. Losses in the pipes come on top and are not counted. Outlets fed from a cistern need nothing of the main.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Ein Hausanschluss, dessen Volumenstrom beim Fließen unter dem Auslegungsvolumenstrom der angeschlossenen Zapfstellen nach ihren Belastungswerten liegt; oder dessen Fließdruck, abzüglich der Höhe bis zu einer Zapfstelle, dort unter 1 bar liegt; oder der einen geschlossenen Speicher mit weniger als 1,5 bar oder 20 l/min speist. Rohrverluste kommen hinzu und sind nicht gezählt. Zapfstellen, die ein Behälter speist, brauchen nichts vom Hausanschluss.</translation>
</message>
<message>
<source>A mains-fed store gives no more than the main does: on a weak main two taps open at once starve each other, the shower runs hot and cold, and a heater that needs a least flow goes out.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Ein geschlossener Speicher gibt nicht mehr als der Hausanschluss: An einem schwachen nehmen zwei offene Hähne einander das Wasser weg, die Dusche wird heiß und kalt, und ein Gerät, das einen Mindestvolumenstrom braucht, geht aus.</translation>
</message>
<message>
<source>Renew or enlarge the service pipe; or add a break tank with a pump set, or an accumulator; or keep a store fed from a cistern.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Erneuern oder vergrößern Sie die Anschlussleitung; oder ergänzen Sie einen Vorbehälter mit Druckerhöhung oder einen Druckspeicher; oder bleiben Sie bei einem Speicher, den ein Behälter speist.</translation>
</message>
<message>
<source>A free end of a pipe, or a port that must be joined, within half a square of another free end, of a free port or of a pipe's line: on the sheet they look joined, in the circuit they are not.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Ein freies Rohrende oder ein Anschluss, der angeschlossen sein muss, weniger als ein halbes Feld von einem anderen freien Ende, einem freien Anschluss oder der Linie eines Rohrs entfernt: Auf dem Blatt sehen sie verbunden aus, im Kreis sind sie es nicht.</translation>
</message>
<message>
<source>Whoever reads the drawing sees a joint; the circuit that is judged, and the list of what to fit, have none.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Wer die Zeichnung liest, sieht eine Verbindung; der Kreis, der beurteilt wird, und die Liste des Einzubauenden haben keine.</translation>
</message>
<message>
<source>Join the two, or move them clearly apart.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Verbinden Sie beide, oder rücken Sie sie deutlich auseinander.</translation>
</message>
<message>
<source>Less than 300 mm straight down below the tundish of a store's relief valve before the first bend. Exactly 300 mm passes. A pipe without a bend that falls by its whole length is straight down all the way.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Weniger als 300 mm gerade hinab unter dem Ablauftrichter eines Speicher-Sicherheitsventils bis zum ersten Bogen. Genau 300 mm genügen. Ein Rohr ohne Bogen, das um seine ganze Länge fällt, führt durchweg gerade hinab.</translation>
</message>
<message>
<source>Water falls freely through the tundish. It needs a straight drop to gather speed; a bend close below holds it up, and scalding water spills over the rim into the room.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Durch den Ablauftrichter fällt das Wasser frei. Es braucht ein gerades Fallstück, um Fahrt aufzunehmen; ein Bogen dicht darunter staut es, und siedend heißes Wasser läuft über den Rand in den Raum.</translation>
</message>
<message>
<source>Let the pipe run straight down for at least 300 mm below the tundish, and only then turn it.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Führen Sie das Rohr unter dem Ablauftrichter mindestens 300 mm gerade hinab und biegen Sie es erst dann ab.</translation>
</message>
<message>
<source>Some position of the motor valves and thermostatic heads leaves no pump able to drive water round a loop through the heat source. A bypass counts only if it lets water from flow to return, stands before the zone valves, takes in both the pump and the heat source, and no hand valve can shut it. Excused where the heat source has no run-on and no least flow and the valves' end switches stop heat and pump: they do once every motor valve is shut, and not while one stands open and another bars the way. If only thermostatic heads do it then, it is advice.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Eine Stellung der Motorventile und Thermostatköpfe lässt keine Pumpe mehr Wasser durch einen Umlauf mit dem Wärmeerzeuger fördern. Ein Überströmventil zählt nur, wenn es Wasser vom Vorlauf zum Rücklauf lässt, vor den Zonenventilen sitzt, Pumpe und Wärmeerzeuger umfasst und von keinem Handventil geschlossen werden kann. Entschuldigt, wo der Wärmeerzeuger weder Nachlauf noch Mindestvolumenstrom hat und die Endschalter der Ventile Wärme und Pumpe anhalten: Das tun sie, sobald jedes Motorventil zu ist, und nicht, solange eines offen steht und ein anderes den Weg versperrt. Tun es dann nur Thermostatköpfe, ist es eine Empfehlung.</translation>
</message>
<message>
<source>When the last zone is satisfied the burner stops, but the metal is still hot and the pump runs on to carry that heat away. With every valve shut there is nowhere to carry it: the water in the heat source boils, bangs, and trips the high limit; in time it cracks the exchanger.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ist der letzte Heizkreis zufrieden, geht der Brenner aus, aber das Metall ist noch heiß, und die Pumpe läuft nach, um diese Wärme fortzutragen. Sind alle Ventile zu, kann sie nirgends hin: Das Wasser im Wärmeerzeuger siedet, schlägt und löst den Begrenzer aus; mit der Zeit reißt der Wärmeübertrager.</translation>
</message>
<message>
<source>Join an automatic bypass valve from flow to return, between the pump and the first zone valve, with no hand valve in it; or leave one emitter, such as a towel rail without valves that anybody can shut, always open.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Schließen Sie zwischen Pumpe und erstem Zonenventil ein automatisches Überströmventil vom Vorlauf zum Rücklauf an, ohne Handventil darin; oder lassen Sie eine Heizfläche immer offen, etwa einen Handtuchheizkörper ohne Ventile, die jemand schließen könnte.</translation>
</message>
<message>
<source>A port that must be joined and has no pipe, and the end of a pipe that is on no part. A cap closes a port or a pipe on purpose. Ports that serve only where they are wanted may stay free. The free outlet of a relief or safety valve is an absent discharge instead.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Ein Anschluss, der angeschlossen sein muss und kein Rohr hat, und das Ende eines Rohrs, das an keinem Bauteil liegt. Eine Kappe verschließt einen Anschluss oder ein Rohr mit Absicht. Anschlüsse, die nur bei Bedarf dienen, dürfen frei bleiben. Der freie Austritt eines Sicherheitsventils ist stattdessen eine fehlende Abblaseleitung.</translation>
</message>
<message>
<source>As drawn, the water would run out here. More often a pipe was forgotten or stops one square short, and every other answer about this circuit then rests on a drawing nobody meant.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>So wie gezeichnet, liefe hier das Wasser aus. Öfter wurde ein Rohr vergessen oder endet ein Feld zu früh, und dann beruht jede andere Antwort zu diesem Kreis auf einer Zeichnung, die niemand so gemeint hat.</translation>
</message>
<message>
<source>Join the end to the part it was meant for, or put a cap on it.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Verbinden Sie das Ende mit dem Bauteil, für das es gedacht war, oder setzen Sie eine Kappe darauf.</translation>
</message>
<message>
<source>A circuit fed from a cistern whose heated water reaches no open vent. Where the heat source's data say that feed and vent may be one pipe, that pipe counts as both.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein aus einem Behälter gespeister Kreis, dessen erwärmtes Wasser keine offene Entlüftung erreicht. Wo laut Angabe des Wärmeerzeugers Speisung und Entlüftung ein einziges Rohr sein dürfen, zählt dieses als beides.</translation>
</message>
<message>
<source>The vent is the way out for steam, air and swelling water when a thermostat fails. Without it a fed circuit is neither vented nor protected as a sealed one is: boiling water has only the cold feed to push back through.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Die Entlüftung ist der Ausweg für Dampf, Luft und Ausdehnungswasser, wenn ein Thermostat versagt. Ohne sie ist ein gespeister Kreis weder entlüftet noch wie ein geschlossener abgesichert: Siedendes Wasser kann nur durch die Speiseleitung zurückdrücken.</translation>
</message>
<message>
<source>Run an open vent of at least 22 mm from the flow near the heat source, rising all the way and ending over the feed cistern, with no valve in it.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie eine offene Entlüftung von mindestens 22 mm vom Vorlauf nahe am Wärmeerzeuger, durchweg steigend und über dem Vorlagebehälter endend, ohne Ventil darin.</translation>
</message>
<message>
<source>Some positions of the valves leave the heated water of an open-vented circuit without its open vent. A secured valve is no excuse.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Manche Stellungen der Ventile lassen das erwärmte Wasser einer offenen Heizung ohne offene Entlüftung. Ein gesichertes Ventil entschuldigt das nicht.</translation>
</message>
<message>
<source>The open vent is the safety valve of an open-vented circuit. A valve that can shut it off turns the heat source into a closed pot: when its thermostat fails, it bursts.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Die offene Entlüftung ist das Sicherheitsventil einer offenen Heizung. Ein Ventil, das sie absperren kann, macht aus dem Wärmeerzeuger einen geschlossenen Topf: Versagt sein Thermostat, birst er.</translation>
</message>
<message>
<source>Take the vent from the flow right at the heat source, before any valve or pump that can be shut, with nothing in it that can shut.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Nehmen Sie die Entlüftung vom Vorlauf unmittelbar am Wärmeerzeuger ab, vor jedem Ventil und jeder Pumpe, die schließen können, und ohne etwas darin, was schließen kann.</translation>
</message>
<message>
<source>A pipe with a bore below 19 mm (copper below 22 mm) anywhere on the way from a heat source's flow, or a store's hot side, to its open vent. Where feed and vent may be one pipe, that pipe is judged.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein Rohr mit weniger als 19 mm Innendurchmesser (Kupfer unter 22 mm) irgendwo auf dem Weg vom Vorlauf eines Wärmeerzeugers oder von der Warmseite eines Speichers zur offenen Entlüftung. Wo Speisung und Entlüftung ein einziges Rohr sein dürfen, wird dieses beurteilt.</translation>
</message>
<message>
<source>A boiling heat source makes more steam than a thin pipe lets out. The pressure then rises and water is thrown out of the vent; scale and sludge close a thin pipe the sooner.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein siedender Wärmeerzeuger erzeugt mehr Dampf, als ein dünnes Rohr hinauslässt. Dann steigt der Druck, und Wasser wird aus der Entlüftung geworfen; Kalk und Schlamm verschließen ein dünnes Rohr umso eher.</translation>
</message>
<message>
<source>Run the vent in 22 mm copper or larger all the way from the heat source or store.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie die Entlüftung vom Wärmeerzeuger oder Speicher an durchweg in 22 mm Kupfer oder größer aus.</translation>
</message>
<message>
<source>A switched heat source on a sealed circuit for which no hand-reset high limit is stated: none at all, or one that resets itself.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein abschaltbarer Wärmeerzeuger an einem geschlossenen Kreis, für den kein von Hand zu entriegelnder Sicherheitstemperaturbegrenzer angegeben ist: gar keiner oder einer, der sich selbst zurückstellt.</translation>
</message>
<message>
<source>A thermostat can stick. On a sealed circuit nothing lets the steam away as an open vent does, and water held under pressure boils well above 100 °C, so what stops the heat must be a second device that the thermostat has nothing to do with. Reset by hand, it makes somebody come and ask why it acted; one that resets itself lets the fault repeat itself unseen.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Thermostat kann klemmen. An einem geschlossenen Kreis führt nichts den Dampf ab, wie eine offene Entlüftung es tut, und Wasser unter Druck siedet weit über 100 °C; also muss eine zweite Einrichtung die Wärme abstellen, mit der der Thermostat nichts zu tun hat. Von Hand zu entriegeln, lässt sie jemanden kommen und fragen, warum sie ausgelöst hat; eine, die sich selbst zurückstellt, lässt den Fehler ungesehen wiederkehren.</translation>
</message>
<message>
<source>Use a heat source with its own hand-reset high limit (overheat cut-out) and state it in the drawing; or add one as the heat source's maker allows.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Verwenden Sie einen Wärmeerzeuger mit eigenem, von Hand zu entriegelndem Sicherheitstemperaturbegrenzer und geben Sie ihn in der Zeichnung an; oder rüsten Sie einen nach, wie der Hersteller es erlaubt.</translation>
</message>
<message>
<source>Two parts whose symbols overlap on the sheet, or tees on one spot. Symbols that touch at their edges do not overlap; nor does a cap on the port that it closes.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Zwei Bauteile, deren Zeichen sich auf dem Blatt überdecken, oder T-Stücke an derselben Stelle. Zeichen, die sich nur am Rand berühren, überdecken sich nicht; ebenso wenig eine Kappe auf dem Anschluss, den sie verschließt.</translation>
</message>
<message>
<source>One symbol hides the other, so that a valve may go unseen, and nobody can tell which pipe goes to which.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Ein Zeichen verdeckt das andere, sodass ein Ventil übersehen werden kann, und niemand erkennt, welches Rohr wohin führt.</translation>
</message>
<message>
<source>Move one of them clear of the other.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Rücken Sie eines vom anderen weg.</translation>
</message>
<message>
<source>In some situation the solved flow runs faster through a pipe than the rule book's limit for noise. Pipes on no loop, and pipes through which no pump drives water, are not judged.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>In einem Betriebszustand fließt das Wasser nach dem gelösten Netz schneller durch ein Rohr, als die Geräuschgrenze des Regelwerks zulässt. Rohre, die in keinem Umlauf liegen oder durch die keine Pumpe Wasser fördert, werden nicht beurteilt.</translation>
</message>
<message>
<source>Fast water can be heard: it hisses at bends and valves, at night most of all. Faster still it wears the tube away from inside, and it costs the pump most of its head.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Schnelles Wasser hört man: Es zischt an Bögen und Ventilen, nachts am meisten. Noch schneller trägt es das Rohr von innen ab, und es kostet die Pumpe den größten Teil ihrer Förderhöhe.</translation>
</message>
<message>
<source>Take the next larger tube, or less flow: a lower pump setting, a bypass set higher.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Nehmen Sie das nächstgrößere Rohr oder weniger Volumenstrom: die Pumpe niedriger, das Überströmventil höher einstellen.</translation>
</message>
<message>
<source>Plastic pipe on the flow or return within a metre of a heat source, measured along the pipe; exactly a metre passes. Where the heat cannot be switched off, plastic that is joined to the heat source with no metal pipe between is a danger. Beyond an emitter, a coil or an exchanger the water has cooled, and nothing is measured there.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Kunststoffrohr an Vorlauf oder Rücklauf innerhalb eines Meters vom Wärmeerzeuger, am Rohr entlang gemessen; genau ein Meter genügt. Wo die Wärme sich nicht abschalten lässt, ist Kunststoff, der ohne Metallrohr dazwischen mit dem Wärmeerzeuger verbunden ist, eine Gefahr. Hinter einer Heizfläche, einer Heizschlange oder einem Wärmeübertrager ist das Wasser abgekühlt, und dort wird nichts gemessen.</translation>
</message>
<message>
<source>Close by the burner the pipe takes heat from the metal, and water far above the flow's setting when the pump stops or the thermostat fails. Plastic softens under pressure well below the boiling point and gives way; a fire's water boils, and a burst pipe then empties steam into the room.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Nahe am Brenner nimmt das Rohr Wärme vom Metall auf und Wasser weit über der Vorlaufeinstellung, wenn die Pumpe stehen bleibt oder der Thermostat versagt. Kunststoff erweicht unter Druck weit unter dem Siedepunkt und gibt nach; das Wasser eines Feuers siedet, und ein geborstenes Rohr bläst dann Dampf in den Raum.</translation>
</message>
<message>
<source>Run the first metre from the heat source in copper or steel; from an uncontrolled heat source, run the whole of the loop that takes its heat away in metal.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Führen Sie den ersten Meter vom Wärmeerzeuger in Kupfer oder Stahl aus; bei einem nicht regelbaren Wärmeerzeuger den ganzen Umlauf, der seine Wärme abführt, in Metall.</translation>
</message>
<message>
<source>Some position of the motor valves and thermostatic heads leaves a running pump with no loop at all to drive water round. A pump that a control acts on is judged in the positions in which the valves of that control are open. Excused as the run-on is, where end switches stop the pump. A pump in drinking water that is part of no ring, as a booster is, is not meant here.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Eine Stellung der Motorventile und Thermostatköpfe lässt einer laufenden Pumpe gar keinen Umlauf, durch den sie Wasser fördern könnte. Eine Pumpe, auf die ein Regler wirkt, wird in den Stellungen beurteilt, in denen die Ventile dieses Reglers offen sind. Entschuldigt wie beim Nachlauf, wo Endschalter die Pumpe anhalten. Eine Pumpe im Trinkwasser, die zu keinem Ring gehört, wie eine Druckerhöhung, ist hier nicht gemeint.</translation>
</message>
<message>
<source>A pump with nowhere to drive water churns what is inside it until that is hot; it wears, hums and in the end seizes, and the pressure it makes finds the weakest joint or pushes a valve open.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Eine Pumpe, die nirgends hin fördern kann, quirlt ihren Inhalt, bis er heiß ist; sie verschleißt, brummt und frisst am Ende fest, und ihr Druck findet die schwächste Verbindung oder drückt ein Ventil auf.</translation>
</message>
<message>
<source>Give the pump an automatic bypass valve from its delivery to its suction side that nothing can shut, let the control that shuts the valves stop the pump too, or leave one way always open.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Geben Sie der Pumpe ein automatisches Überströmventil von ihrer Druckseite zur Saugseite, das nichts schließen kann, lassen Sie den Regler, der die Ventile schließt, auch die Pumpe anhalten, oder lassen Sie einen Weg immer offen.</translation>
</message>
<message>
<source>Open-vented heating in which every way from the feed's tee to the vent's that passes no emitter, coil or exchanger leads through a pump, built-in pumps too.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Eine offene Heizung, in der jeder Weg vom T-Stück der Speisung zu dem der Entlüftung, der durch keine Heizfläche, Heizschlange und keinen Wärmeübertrager führt, durch eine Pumpe geht, auch durch eine eingebaute.</translation>
</message>
<message>
<source>The feed's tee is where the pump leaves the pressure as it is. With the pump between, its whole head stands between feed and vent: water is pumped over into the cistern without end, or air is drawn in through the vent. Either way fresh air gets into the water and the circuit rusts away.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Am T-Stück der Speisung lässt die Pumpe den Druck, wie er ist. Sitzt die Pumpe dazwischen, liegt ihre ganze Förderhöhe zwischen Speisung und Entlüftung: Wasser wird ohne Ende in den Behälter übergepumpt, oder Luft wird durch die Entlüftung angesaugt. So oder so gelangt frische Luft ins Wasser, und der Kreis rostet dahin.</translation>
</message>
<message>
<source>Put the pump after both, so that water passes the vent's tee, the feed's tee and then the pump.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Setzen Sie die Pumpe hinter beide, sodass das Wasser am T-Stück der Entlüftung, dann an dem der Speisung und dann an der Pumpe vorbeikommt.</translation>
</message>
<message>
<source>In pumped, open-vented heating: a vent no higher above the cistern's water than the head of the pump between the feed's tee and the vent's; a pump that sucks on the vent's tee, or stands so that it sucks on the emitters (vent and feed on its delivery side), with more head than the water that stands above; and a vent that ends lower above the water than pumped heating (450 mm), or gravity hot water beside it (40 mm a metre and 150 mm), needs.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>In einer offenen Heizung mit Pumpe: eine Entlüftung, die nicht höher über dem Wasserspiegel des Behälters endet als die Förderhöhe der Pumpe zwischen dem T-Stück der Speisung und ihrem eigenen; eine Pumpe, die am T-Stück der Entlüftung saugt oder so sitzt, dass sie an den Heizflächen saugt (Entlüftung und Speisung auf ihrer Druckseite), mit mehr Förderhöhe, als Wasser darüber steht; und eine Entlüftung, die niedriger über dem Wasserspiegel endet, als gepumpte Heizung (450 mm) oder Warmwasser durch Schwerkraft daneben (40 mm je Meter und 150 mm) es braucht.</translation>
</message>
<message>
<source>Pressure is fixed where the feed joins. Whatever a pump adds at the vent lifts the water in it by so much, and what it takes away lowers it. Water that runs over into the cistern is heated and aired for nothing, air that is drawn in stops radiators and rusts the circuit from within.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Der Druck liegt dort fest, wo die Speisung anschließt. Was eine Pumpe an der Entlüftung hinzufügt, hebt das Wasser darin um so viel, und was sie wegnimmt, senkt es. Wasser, das in den Behälter überläuft, wird umsonst erwärmt und belüftet; Luft, die angesaugt wird, legt Heizkörper lahm und lässt den Kreis von innen rosten.</translation>
</message>
<message>
<source>Let the water pass the vent's tee, close by it the feed's, and then the pump; end the vent high enough above the water; or raise the cistern.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Lassen Sie das Wasser am T-Stück der Entlüftung, dicht daneben an dem der Speisung und dann an der Pumpe vorbeikommen; lassen Sie die Entlüftung hoch genug über dem Wasserspiegel enden; oder heben Sie den Behälter an.</translation>
</message>
<message>
<source>In a situation that calls them, the emitters and coils that have no water without this pump get together less than 90 % of their design flow, and the pump itself moves less than that too: what a bypass takes away, or a pump beyond a separator fails to carry on, is not its weakness. Where they want more heat than the heat sources give, their design is cut to that; beside a coil whose power has no number they are not judged.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>In einem Betriebszustand, in dem sie gefordert sind, bekommen die Heizflächen und Heizschlangen, die ohne diese Pumpe kein Wasser haben, zusammen weniger als 90 % ihres Auslegungsvolumenstroms, und auch die Pumpe selbst fördert weniger als das: Was ein Überströmventil wegnimmt oder eine Pumpe hinter einer Weiche nicht weiterträgt, ist nicht ihre Schwäche. Wo sie mehr Wärme wollen, als die Wärmeerzeuger geben, ist ihre Auslegung darauf gekürzt; neben einer Heizschlange ohne Leistungsangabe werden sie nicht beurteilt.</translation>
</message>
<message>
<source>The pump carries the heat. If it can't push enough water round, the far rooms stay cool however hot the heat source runs, and no setting of the valves can give what the pump does not bring.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Die Pumpe trägt die Wärme. Kann sie nicht genug Wasser umwälzen, bleiben die entfernten Räume kühl, wie heiß der Wärmeerzeuger auch läuft, und keine Ventileinstellung kann geben, was die Pumpe nicht bringt.</translation>
</message>
<message>
<source>Take a pump with more head at the design flow, or wider pipes and valves on the way that loses most pressure.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Nehmen Sie eine Pumpe mit mehr Förderhöhe beim Auslegungsvolumenstrom, oder weitere Rohre und Ventile auf dem Weg, der am meisten Druck verliert.</translation>
</message>
<message>
<source>Some positions of the valves leave a mains-fed store without its temperature relief valve, or without any expansion relief valve. Every valve that can shut counts, and a secured one is no excuse: nothing of any kind may stand between. A one-way or reducing part on the only way is told as an absent valve.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Manche Stellungen der Ventile lassen einen geschlossenen Speicher ohne sein Temperatur-Sicherheitsventil oder ohne jedes Ausdehnungs-Sicherheitsventil. Jedes Ventil, das schließen kann, zählt, und ein gesichertes entschuldigt nichts: Nichts gleich welcher Art darf dazwischen sitzen. Ein Bauteil auf dem einzigen Weg, das nur in eine Richtung durchlässt oder den Druck mindert, gilt als fehlendes Ventil und ist Sache einer anderen Prüfung.</translation>
</message>
<message>
<source>A relief valve behind a shut valve is no relief valve. Whoever shuts it, to work on a tap, does not know that he has just taken the last guard off a closed vessel of hot water.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein Sicherheitsventil hinter einem geschlossenen Ventil ist keines. Wer es schließt, um an einem Hahn zu arbeiten, weiß nicht, dass er gerade den letzten Wächter von einem geschlossenen Behälter mit heißem Wasser genommen hat.</translation>
</message>
<message>
<source>Take the valve out of the way, or move the relief valve to the store's side of it.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Nehmen Sie das Ventil aus dem Weg, oder versetzen Sie das Sicherheitsventil auf die Speicherseite davon.</translation>
</message>
<message>
<source>A temperature relief valve on the water of a mains-fed store that is joined to the cold feed, the hot pipe or the secondary return instead of the store's relief port. Stores of 15 litres or less are outside this rule.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein Temperatur-Sicherheitsventil am Wasser eines geschlossenen Speichers, das am Kaltwasserzulauf, an der Warmwasserleitung oder an der Zirkulation sitzt statt am Abblaseanschluss des Speichers. Speicher bis 15 Liter fallen nicht unter diese Regel.</translation>
</message>
<message>
<source>The valve opens when the water it touches is too hot. On cold pipe it never feels the heat; on the hot pipe it feels it only while somebody draws. It must sit in the store's hottest water.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Das Ventil öffnet, wenn das Wasser, das es berührt, zu heiß ist. An einem kalten Rohr spürt es die Hitze nie; an der Warmwasserleitung nur, während jemand zapft. Es muss im heißesten Wasser des Speichers sitzen.</translation>
</message>
<message>
<source>Move the valve to the store's relief port, with nothing between.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Versetzen Sie das Ventil an den Abblaseanschluss des Speichers, ohne etwas dazwischen.</translation>
</message>
<message>
<source>A relief valve of a mains-fed store set above the store's highest pressure, or a temperature relief valve set above 95 °C: danger. A reducing valve set above 0.8 of the expansion relief valve: a fault. Exactly a limit passes. Valves built into a store come set with it.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein Sicherheitsventil eines geschlossenen Speichers, das über dessen Höchstdruck eingestellt ist, oder ein über 95 °C eingestelltes Temperatur-Sicherheitsventil: Gefahr. Ein Druckminderer, der über 0,8 des Ausdehnungs-Sicherheitsventils eingestellt ist: Mangel. Genau der Grenzwert genügt. In einen Speicher eingebaute Ventile kommen mit ihm passend eingestellt.</translation>
</message>
<message>
<source>The settings must stand in a row: reducing valve, then expansion relief, then what the store is made for. A relief valve set above the store opens after the store has given; one set close above the reducing valve weeps at every heating, and a valve that weeps scales up and sticks.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Die Einstellungen müssen in einer Reihe stehen: Druckminderer, dann Ausdehnungs-Sicherheitsventil, dann das, wofür der Speicher gebaut ist. Ein Sicherheitsventil, das darüber eingestellt ist, öffnet, nachdem der Speicher nachgegeben hat; eines dicht über dem Druckminderer tropft bei jedem Aufheizen, und ein tropfendes Ventil verkalkt und sitzt fest.</translation>
</message>
<message>
<source>Fit a relief valve set at or below the store's highest pressure; set the reducing valve at 0.8 of the expansion relief valve or lower. Relief valves are not to be adjusted on site.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie ein Sicherheitsventil ein, das auf den Höchstdruck des Speichers oder darunter eingestellt ist; stellen Sie den Druckminderer auf 0,8 des Ausdehnungs-Sicherheitsventils oder niedriger. Sicherheitsventile dürfen nicht vor Ort verstellt werden.</translation>
</message>
<message>
<source>A sealed circuit in which the water that is heated reaches no safety valve by a way pressure can always take with the valves open, and none is built in. Water behind a heat exchanger is a body of its own and needs its own safety valve.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein geschlossener Kreis, in dem das erwärmte Wasser auf einem Weg, den der Druck bei offenen Ventilen immer nehmen kann, kein Sicherheitsventil erreicht und keines eingebaut ist. Wasser hinter einem Wärmeübertrager ist ein eigenes Wasser und braucht ein eigenes Sicherheitsventil.</translation>
</message>
<message>
<source>The safety valve is the last thing between a fault (a failed vessel, a stuck thermostat, a filling link left open) and a burst. Without one, pressure climbs until the weakest part gives.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Das Sicherheitsventil ist das Letzte, was zwischen einem Fehler (einem defekten Ausdehnungsgefäß, einem klemmenden Thermostat, einer offen gelassenen Füllverbindung) und einem Bersten steht. Ohne es steigt der Druck, bis das schwächste Bauteil nachgibt.</translation>
</message>
<message>
<source>Fit a safety valve on the flow, close by the heat source, set no higher than the lowest pressure that anything on this water is made for, with its discharge led to a safe place.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie am Vorlauf nahe am Wärmeerzeuger ein Sicherheitsventil ein, nicht höher eingestellt als der niedrigste Druck, für den irgendetwas an diesem Wasser gebaut ist, und führen Sie seine Abblaseleitung an einen sicheren Ort.</translation>
</message>
<message>
<source>A heat source of a sealed circuit whose nearest safety valve is more than a metre of pipe from its flow, or is not on its flow at all but beyond an emitter, a coil or on the return; or one that is reached from the flow only through a strainer, a dirt separator or a plate exchanger, which can block. Each heat source needs one of its own.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Wärmeerzeuger eines geschlossenen Kreises, dessen nächstes Sicherheitsventil mehr als einen Meter Rohr von seinem Vorlauf entfernt ist oder gar nicht am Vorlauf sitzt, sondern hinter einer Heizfläche, einer Heizschlange oder am Rücklauf; oder eines, das vom Vorlauf aus nur durch einen Schmutzfänger, einen Schlammabscheider oder einen Plattenwärmeübertrager erreicht wird, der verstopfen kann. Jeder Wärmeerzeuger braucht ein eigenes.</translation>
</message>
<message>
<source>Steam forms in the heat source and leaves at its flow. A valve far off, or beyond a strainer that has caught the sludge of years, does not see that pressure in time, or at all.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Dampf entsteht im Wärmeerzeuger und verlässt ihn am Vorlauf. Ein Ventil weit weg, oder hinter einem Schmutzfänger mit dem Schlamm von Jahren, spürt diesen Druck nicht rechtzeitig oder gar nicht.</translation>
</message>
<message>
<source>Fit the safety valve on the flow pipe right at the heat source, before any strainer, with a short pipe of full bore up to it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Setzen Sie das Sicherheitsventil an das Vorlaufrohr unmittelbar am Wärmeerzeuger, vor jeden Schmutzfänger, mit einem kurzen Rohr von vollem Durchmesser dorthin.</translation>
</message>
<message>
<source>Some positions of the valves leave the heated water of a sealed circuit with no safety valve. A secured valve is no excuse here: no valve of any kind may stand between them.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Manche Stellungen der Ventile lassen das erwärmte Wasser eines geschlossenen Kreises ohne Sicherheitsventil. Ein gesichertes Ventil entschuldigt hier nichts: Kein Ventil gleich welcher Art darf dazwischen sitzen.</translation>
</message>
<message>
<source>If anything can be shut between the heat source and its safety valve, then one wrong turn of a valve leaves a fired heat source with no limit to its pressure. That can burst it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Kann zwischen Wärmeerzeuger und Sicherheitsventil irgendetwas geschlossen werden, so lässt ein einziger falscher Griff einen heizenden Wärmeerzeuger ohne Druckgrenze zurück. Das kann ihn zum Bersten bringen.</translation>
</message>
<message>
<source>Move the safety valve to the flow right at the heat source, before any valve, or take the valve out of the way to it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Versetzen Sie das Sicherheitsventil an den Vorlauf unmittelbar am Wärmeerzeuger, vor jedes Ventil, oder nehmen Sie das Ventil aus dem Weg dorthin.</translation>
</message>
<message>
<source>A safety valve of a sealed circuit set above the highest pressure that a heat source, a vessel or a coil on its water is made for. One that is built in and states no setting is taken as set at what its heat source is made for.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Sicherheitsventil eines geschlossenen Kreises, das über dem Höchstdruck eingestellt ist, für den ein Wärmeerzeuger, ein Ausdehnungsgefäß oder eine Heizschlange an seinem Wasser gebaut ist. Ein eingebautes ohne angegebenen Ansprechdruck gilt als auf das eingestellt, wofür sein Wärmeerzeuger gebaut ist.</translation>
</message>
<message>
<source>The valve is there to open before anything breaks. Set above what the weakest part can bear, it watches that part burst: the pressure that should have lifted it is never reached.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Das Ventil ist dazu da, zu öffnen, bevor etwas bricht. Über dem eingestellt, was das schwächste Bauteil aushält, sieht es diesem beim Bersten zu: Der Druck, der es öffnen sollte, wird nie erreicht.</translation>
</message>
<message>
<source>Fit a safety valve set no higher than the weakest part on its water is made for, or replace that part by one made for more.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie ein Sicherheitsventil ein, das nicht höher eingestellt ist, als das schwächste Bauteil an seinem Wasser aushält, oder ersetzen Sie dieses Bauteil durch eines, das mehr aushält.</translation>
</message>
<message>
<source>The heat sources on one sealed water give more heat, at their full output, than its safety valves can blow off together. A valve that is built into a heat source is taken as large enough for that heat source and for no other. Behind a heat exchanger the whole output of the heat sources counts.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Die Wärmeerzeuger an einem geschlossenen Wasser geben bei voller Leistung mehr Wärme, als dessen Sicherheitsventile zusammen abblasen können. Ein in einen Wärmeerzeuger eingebautes Ventil gilt als groß genug für diesen und für keinen anderen. Hinter einem Wärmeübertrager zählt die ganze Leistung der Wärmeerzeuger.</translation>
</message>
<message>
<source>When everything else has failed the heat source boils, and all its heat leaves as steam through the safety valve. A valve that can pass less than is made opens and the pressure climbs all the same.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Hat alles andere versagt, siedet der Wärmeerzeuger, und seine ganze Wärme entweicht als Dampf durch das Sicherheitsventil. Ein Ventil, das weniger durchlässt, als entsteht, öffnet, und der Druck steigt trotzdem.</translation>
</message>
<message>
<source>Fit a safety valve whose stated capacity in kW is at least the output of all heat sources on its water, or one more valve beside each heat source.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie ein Sicherheitsventil ein, dessen angegebene Abblaseleistung in kW mindestens die Leistung aller Wärmeerzeuger an seinem Wasser erreicht, oder neben jedem Wärmeerzeuger ein weiteres.</translation>
</message>
<message>
<source>A store's secondary return by which water can leave the store again and come out at an outlet or at the store's hot side: no check valve, none that points to the store, or one with a way round it. A return that a pump drives into the store's cold pipe is judged the same.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Die Zirkulation eines Speichers, durch die Wasser den Speicher wieder verlassen und an einer Zapfstelle oder an der Warmseite des Speichers herauskommen kann: kein Rückflussverhinderer, keiner, der zum Speicher zeigt, oder einer mit einem Weg daran vorbei. Eine Zirkulation, die eine Pumpe in das Kaltwasserrohr des Speichers fördert, wird ebenso beurteilt.</translation>
</message>
<message>
<source>When a tap is opened, water takes every way to it. Through an unguarded return it comes from low in the store, or straight from the cold pipe: the tap runs lukewarm while the store is hot, and the return fills with water that is warm enough to breed legionella.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Wird ein Hahn geöffnet, nimmt das Wasser jeden Weg dorthin. Durch eine ungeschützte Zirkulation kommt es von unten aus dem Speicher oder geradewegs aus dem Kaltwasserrohr: Der Hahn läuft lauwarm, obwohl der Speicher heiß ist, und die Zirkulation füllt sich mit Wasser, das warm genug für Legionellen ist.</translation>
</message>
<message>
<source>Cut a check valve into the return, next to its pump, pointing to the store.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Setzen Sie neben der Pumpe einen Rückflussverhinderer in die Zirkulation, der zum Speicher zeigt.</translation>
</message>
<message>
<source>A pipe that carries the discharge of two or more mains-fed stores and is not one standard size larger than the largest that one of them needs by itself. Each store's pipe is sized for its whole run, from its tundish to the end. Valves of one store count as one; stores of 15 litres or less are outside this rule.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Ein Rohr, das das Abblasen von zwei oder mehr geschlossenen Speichern führt und nicht eine Normgröße über der größten liegt, die einer davon allein braucht. Das Rohr jedes Speichers ist für seine ganze Strecke vom Ablauftrichter bis zum Ende bemessen. Ventile eines Speichers zählen als eines; Speicher bis 15 Liter fallen nicht unter diese Regel.</translation>
</message>
<message>
<source>When the main surges or the heat source runs away, the stores lift together. A pipe sized for one of them backs up with the other's boiling water, which then comes out at a tundish indoors.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Schlägt der Druck des Hausanschlusses oder geht der Wärmeerzeuger durch, öffnen die Ventile der Speicher gemeinsam. Ein für einen bemessenes Rohr staut sich mit dem siedenden Wasser des anderen, das dann im Haus aus einem Ablauftrichter kommt.</translation>
</message>
<message>
<source>Make the common pipe one size larger than the largest single one, or lead each store's discharge to an end of its own.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Machen Sie das gemeinsame Rohr eine Größe größer als das größte einzelne, oder führen Sie die Abblaseleitung jedes Speichers zu einem eigenen Ende.</translation>
</message>
<message>
<source>In some situation in which the pump runs, pump run-on with the zones shut included, the solved flow through the heat source is below its least flow. Thermostatic heads are taken as open. A heat source with a bypass of its own built in looks after its least flow itself, and is passed.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>In einem Betriebszustand, in dem die Pumpe läuft, auch beim Nachlauf mit geschlossenen Heizkreisen, liegt der gelöste Volumenstrom durch den Wärmeerzeuger unter seinem Mindestvolumenstrom. Thermostatköpfe gelten als offen. Ein Wärmeerzeuger mit eigenem eingebauten Überströmventil sorgt selbst für seinen Mindestvolumenstrom und wird nicht beanstandet.</translation>
</message>
<message>
<source>A heat source makes its heat whether the water takes it away or not. With too little water passing, that water boils against the hot metal, bangs, and trips the limit; the burner cuts in and out and the heat exchanger cracks in the end.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Ein Wärmeerzeuger erzeugt seine Wärme, ob das Wasser sie fortträgt oder nicht. Fließt zu wenig Wasser, siedet es am heißen Metall, schlägt und löst den Begrenzer aus; der Brenner schaltet ein und aus, und am Ende reißt der Wärmeübertrager.</translation>
</message>
<message>
<source>Set the bypass lower so that it opens sooner, give the pump a larger setting, or widen what holds the water back between pump and heat source.</source>
<extracomment>checks/lessons/flow</extracomment>
<translation>Stellen Sie das Überströmventil niedriger ein, damit es früher öffnet, stellen Sie die Pumpe höher ein, oder erweitern Sie, was zwischen Pumpe und Wärmeerzeuger das Wasser hemmt.</translation>
</message>
<message>
<source>A main whose water comes to an outlet, a store, a heat source or a cistern with no valve on the way that can be shut by hand. A valve before each of these serves as well as one for all; a filling link has its own. Motorised valves, check valves and reducing valves shut nothing off.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Ein Hausanschluss, dessen Wasser zu einer Zapfstelle, einem Speicher, einem Wärmeerzeuger oder einem Behälter kommt, ohne dass auf dem Weg ein Ventil von Hand geschlossen werden kann. Ein Ventil vor jedem davon genügt ebenso wie eines für alle; eine Füllverbindung hat ihr eigenes. Motorventile, Rückflussverhinderer und Druckminderer sperren nichts ab.</translation>
</message>
<message>
<source>When a pipe bursts somebody must be able to stop the water at once, and whoever works on a tap or a float valve must be able to do so without the water undertaker. With no valve the water runs until one is found in the street.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Bricht ein Rohr, muss jemand das Wasser sofort abstellen können, und wer an einem Hahn oder Schwimmerventil arbeitet, muss es ohne das Wasserwerk können. Ohne Ventil läuft das Wasser, bis in der Straße eines gefunden ist.</translation>
</message>
<message>
<source>Fit a stop valve where the main comes in, above the floor and within reach.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Bauen Sie dort, wo der Hausanschluss hereinkommt, über dem Boden und in Reichweite ein Absperrventil ein.</translation>
</message>
<message>
<source>A mains-fed store whose feed from the main passes no reducing valve, or one set above the store's highest pressure. Danger where the main stands above the store's highest pressure, or the reducing valve is set above it; without any reducing valve it is a fault even where the main stands lower by day.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher, dessen Zulauf vom Hausanschluss durch keinen Druckminderer führt oder durch einen, der über dem Höchstdruck des Speichers eingestellt ist. Gefahr, wo der Hausanschluss über dem Höchstdruck des Speichers steht oder der Druckminderer darüber eingestellt ist; ganz ohne Druckminderer ist es auch dann ein Mangel, wenn der Hausanschluss tagsüber niedriger steht.</translation>
</message>
<message>
<source>The pressure of a main is not constant: it rises at night, when nobody draws, and after work in the street. A store is made for a stated pressure and no more, and the relief valve is not there to hold back the main.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Der Druck eines Hausanschlusses ist nicht gleichbleibend: Er steigt nachts, wenn niemand zapft, und nach Arbeiten in der Straße. Ein Speicher ist für einen angegebenen Druck gebaut und nicht mehr, und das Sicherheitsventil ist nicht dazu da, den Hausanschluss zurückzuhalten.</translation>
</message>
<message>
<source>Fit a reducing valve in the cold feed, or an inlet group with one in it, set well below the store's highest pressure.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie in den Kaltwasserzulauf einen Druckminderer oder eine Sicherheitsgruppe mit einem solchen ein, eingestellt weit unter dem Höchstdruck des Speichers.</translation>
</message>
<message>
<source>A store that a heat source warms through its coil, where no store thermostat acts on a valve or pump that stops the coil's flow: danger for a mains-fed store, a fault for a vented one.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein Speicher, den ein Wärmeerzeuger durch seine Heizschlange erwärmt und bei dem kein Speicherthermostat auf ein Ventil oder eine Pumpe wirkt, die den Durchfluss der Heizschlange stoppt: Gefahr bei einem geschlossenen, Mangel bei einem offenen Speicher.</translation>
</message>
<message>
<source>The store thermostat is the first guard against water that is too hot. Without one the store is heated to whatever the heat source gives: it scalds at the tap, wastes heat, and a mains-fed store is left to its cut-out and its relief valve, which are there for failures and not for every day.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Der Speicherthermostat ist der erste Wächter gegen zu heißes Wasser. Ohne ihn wird der Speicher so heiß, wie der Wärmeerzeuger es hergibt: Am Hahn verbrüht man sich, Wärme wird vergeudet, und ein geschlossener Speicher bleibt seinem Begrenzer und seinem Sicherheitsventil überlassen, die für Störungen da sind und nicht für jeden Tag.</translation>
</message>
<message>
<source>Fit a store thermostat and let it act on the motorised valve, or the pump, of the coil.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie einen Speicherthermostat ein und lassen Sie ihn auf das Motorventil oder die Pumpe der Heizschlange wirken.</translation>
</message>
<message>
<source>A store whose thermostat is set below 60 °C, by its own data or by the store thermostat that stops its coil; of several settings the lowest counts. Exactly 60 °C passes.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Ein Speicher, dessen Thermostat unter 60 °C eingestellt ist, nach seinen eigenen Angaben oder durch den Speicherthermostat, der seine Heizschlange stoppt; von mehreren Einstellungen zählt die niedrigste. Genau 60 °C genügen.</translation>
</message>
<message>
<source>Legionella, which kills by the lungs, grows in water from 20 to 45 °C, and does not die quickly until nearly 60 °C. A store that is always lukewarm breeds it, and a shower makes a mist of it.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Legionellen, die durch die Lunge töten, wachsen in Wasser von 20 bis 45 °C und sterben erst bei fast 60 °C schnell. Ein stets lauwarmer Speicher züchtet sie, und eine Dusche macht einen Nebel daraus.</translation>
</message>
<message>
<source>Set the store's thermostat to 60 °C, and blend the water down where it is drawn.</source>
<extracomment>checks/lessons/supply</extracomment>
<translation>Stellen Sie den Thermostat des Speichers auf 60 °C, und mischen Sie das Wasser dort herunter, wo es gezapft wird.</translation>
</message>
<message>
<source>A vented store whose hot side reaches no open vent by a way that water can take both ways. A vent on its cold feed is none: steam and air gather at the top.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein offener Speicher, dessen Warmseite keine offene Entlüftung auf einem Weg erreicht, den Wasser in beide Richtungen nehmen kann. Eine Entlüftung am Kaltwasserzulauf ist keine: Dampf und Luft sammeln sich oben.</translation>
</message>
<message>
<source>When the store's thermostat fails the water boils. Without a vent, steam can only push the hot water back down the cold feed into the cistern, or burst the store.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Versagt der Thermostat des Speichers, siedet das Wasser. Ohne Entlüftung kann Dampf das heiße Wasser nur durch den Kaltwasserzulauf in den Behälter zurückdrücken oder den Speicher sprengen.</translation>
</message>
<message>
<source>Run a vent of at least 22 mm from the top of the store, rising all the way, to end over the cistern that feeds it, with nothing in it that can shut.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie von oben aus dem Speicher eine Entlüftung von mindestens 22 mm, durchweg steigend, bis über den Behälter, der ihn speist, ohne etwas darin, was schließen kann.</translation>
</message>
<message>
<source>Some positions of the valves leave the hot side of a vented store without its open vent. A secured valve is no excuse.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Manche Stellungen der Ventile lassen die Warmseite eines offenen Speichers ohne ihre offene Entlüftung. Ein gesichertes Ventil entschuldigt das nicht.</translation>
</message>
<message>
<source>The open vent is the safety valve of a vented store. With it shut, a store whose thermostat fails becomes a closed pot.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Die offene Entlüftung ist das Sicherheitsventil eines offenen Speichers. Ist sie zu, wird ein Speicher, dessen Thermostat versagt, zum geschlossenen Topf.</translation>
</message>
<message>
<source>Take the vent from the top of the store, before any valve, with nothing in it that can shut.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Nehmen Sie die Entlüftung oben am Speicher ab, vor jedem Ventil und ohne etwas darin, was schließen kann.</translation>
</message>
<message>
<source>A mains-fed store without internal expansion whose water reaches no expansion vessel by a way water can go out and come back. A vessel on the main's side of the check valve does not count.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher ohne inneren Ausdehnungsraum, dessen Wasser kein Ausdehnungsgefäß auf einem Weg erreicht, auf dem Wasser hinaus und zurück kann. Ein Gefäß auf der Anschlussseite des Rückflussverhinderers zählt nicht.</translation>
</message>
<message>
<source>The check valve shuts the water in. As it heats to 60 °C it swells by nearly 2 %, and there is nowhere to go: the expansion relief valve must open at every heating, wastes water, scales up, and one day no longer shuts, or no longer opens.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Der Rückflussverhinderer schließt das Wasser ein. Auf 60 °C erwärmt, dehnt es sich um fast 2 % aus und kann nirgends hin: Das Ausdehnungs-Sicherheitsventil muss bei jedem Aufheizen öffnen, vergeudet Wasser, verkalkt und schließt eines Tages nicht mehr, oder öffnet nicht mehr.</translation>
</message>
<message>
<source>Join an expansion vessel for drinking water to the cold feed between the check valve and the store, charged at the reducing valve's setting; or use a store with internal expansion.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Schließen Sie zwischen Rückflussverhinderer und Speicher ein Ausdehnungsgefäß für Trinkwasser an den Kaltwasserzulauf an, mit der Einstellung des Druckminderers als Vordruck; oder verwenden Sie einen Speicher mit innerem Ausdehnungsraum.</translation>
</message>
<message>
<source>Some positions of the valves leave a mains-fed store without internal expansion with no expansion vessel. Every valve that can shut counts, and a secured one is no excuse.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Manche Stellungen der Ventile lassen einen geschlossenen Speicher ohne inneren Ausdehnungsraum ohne Ausdehnungsgefäß. Jedes Ventil, das schließen kann, zählt, und ein gesichertes entschuldigt nichts.</translation>
</message>
<message>
<source>With the vessel shut off, the swell of every heating goes through the expansion relief valve, which is the last guard of its pressure and is not made to work every day.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ist das Ausdehnungsgefäß abgesperrt, geht die Ausdehnung bei jedem Aufheizen durch das Ausdehnungs-Sicherheitsventil, das der letzte Wächter über den Druck ist und nicht dafür gebaut, jeden Tag zu arbeiten.</translation>
</message>
<message>
<source>Move the vessel's tee to the store's side of the valve, or take the valve out of the way.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Versetzen Sie das T-Stück des Ausdehnungsgefäßes auf die Speicherseite des Ventils, oder nehmen Sie das Ventil aus dem Weg.</translation>
</message>
<message>
<source>The vessel of a mains-fed store charged to more than the reducing valve before it is set at, or to more than 0.2 bar less. Where no reducing valve holds the feed, that is told first, and nothing is said here; nor of a store with internal expansion.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Das Ausdehnungsgefäß eines geschlossenen Speichers mit mehr Vordruck, als der Druckminderer davor eingestellt ist, oder mit mehr als 0,2 bar weniger. Wo kein Druckminderer die Speisung hält, wird das zuerst gesagt und hier nichts; ebenso bei einem Speicher mit innerem Ausdehnungsraum.</translation>
</message>
<message>
<source>The gas in the vessel stands against the cold water that the reducing valve lets in. Charged to less, the vessel is partly full of water before anything is heated, and that much is lost for the swell. Charged to more, it takes up nothing until the pressure has climbed to its charge, which is so much nearer to where the relief valve weeps.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Das Gas im Gefäß steht gegen das kalte Wasser, das der Druckminderer einlässt. Mit weniger Vordruck ist das Gefäß zum Teil voll Wasser, bevor etwas erwärmt wird, und so viel fehlt für die Ausdehnung. Mit mehr nimmt es nichts auf, bevor der Druck auf den Vordruck gestiegen ist, und das ist um so viel näher an dem, wobei das Sicherheitsventil tropft.</translation>
</message>
<message>
<source>With a hot tap open and no pressure at the vessel, charge it to what the reducing valve is set at, or up to 0.2 bar less.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bringen Sie den Vordruck, bei offenem Warmwasserhahn und drucklosem Gefäß, auf die Einstellung des Druckminderers oder bis zu 0,2 bar darunter.</translation>
</message>
<message>
<source>A mains-fed store whose vessels, charged as they are, cannot take up the swell of its water from cold to its thermostat's setting between the reducing valve's pressure and 0.8 of the expansion relief valve's. A secondary circuit of more than 10 litres is added. Several stores on one water share their vessels. A store with internal expansion is left out.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher, dessen Ausdehnungsgefäße mit ihrem Vordruck die Ausdehnung seines Wassers von kalt bis zur Thermostateinstellung zwischen dem Druck des Druckminderers und 0,8 des Ausdehnungs-Sicherheitsventils nicht aufnehmen können. Eine Zirkulation von mehr als 10 Litern kommt hinzu. Mehrere Speicher an einem Wasser teilen sich ihre Gefäße. Ein Speicher mit innerem Ausdehnungsraum bleibt außer Betracht.</translation>
</message>
<message>
<source>The gas in a vessel is squeezed as water comes in. If the vessel is too small, or charged too high or too low, the pressure reaches the expansion relief valve before the water is hot, and the valve weeps at every heating.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Das Gas in einem Gefäß wird zusammengedrückt, wenn Wasser eintritt. Ist das Gefäß zu klein oder sein Vordruck zu hoch oder zu niedrig, erreicht der Druck das Ausdehnungs-Sicherheitsventil, bevor das Wasser heiß ist, und das Ventil tropft bei jedem Aufheizen.</translation>
</message>
<message>
<source>Fit a larger vessel, or charge it from 0.2 bar below the reducing valve's setting to equal.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Bauen Sie ein größeres Gefäß ein, oder bringen Sie den Vordruck auf einen Wert von 0,2 bar unter der Einstellung des Druckminderers bis gleich.</translation>
</message>
<message>
<source>A mains-fed store of more than 15 litres that reaches no temperature relief valve of its own by a way pressure can always take with the valves open, and has none built in. A check valve or a reducing valve on the only way does not count as one. A valve that stands on another store's relief port feels that store's heat and not this one's.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein geschlossener Speicher von mehr als 15 Litern, der auf einem Weg, den der Druck bei offenen Ventilen immer nehmen kann, kein eigenes Temperatur-Sicherheitsventil erreicht und keines eingebaut hat. Ein Rückflussverhinderer oder Druckminderer auf dem einzigen Weg gilt nicht als eines. Ein Ventil am Abblaseanschluss eines anderen Speichers spürt dessen Hitze und nicht die dieses Speichers.</translation>
</message>
<message>
<source>If thermostat and cut-out both fail, the water goes on heating. At mains pressure it passes 100 °C without boiling, and the moment the store gives, all of it flashes to steam: that is an explosion. The temperature relief valve lets the hot water go before that, and it needs no electricity.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Versagen Thermostat und Begrenzer beide, heizt sich das Wasser weiter auf. Unter Anschlussdruck überschreitet es 100 °C, ohne zu sieden, und in dem Augenblick, in dem der Speicher nachgibt, wird alles auf einmal zu Dampf: Das ist eine Explosion. Das Temperatur-Sicherheitsventil lässt das heiße Wasser vorher ab, und es braucht keinen Strom.</translation>
</message>
<message>
<source>Fit a temperature relief valve on the store's relief port, in its hottest water, with nothing between, and lead its discharge through a tundish to a safe place.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Setzen Sie ein Temperatur-Sicherheitsventil an den Abblaseanschluss des Speichers, in dessen heißestes Wasser, mit nichts dazwischen, und führen Sie seine Abblaseleitung durch einen Ablauftrichter an einen sicheren Ort.</translation>
</message>
<message>
<source>A radiator or zone with thermostatic heads in the room in which a room thermostat hangs.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Heizkörper oder Heizkreis mit Thermostatköpfen in dem Raum, in dem ein Raumthermostat hängt.</translation>
</message>
<message>
<source>Two controls then mind one room. If the head is set lower, it shuts the radiator before the thermostat has enough: the room never gets as warm as the thermostat asks for, so it never stops calling, and the heat source runs on for the rest of the house.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Dann hüten zwei Regler einen Raum. Steht der Kopf niedriger, schließt er den Heizkörper, bevor der Thermostat genug hat: Der Raum wird nie so warm, wie der Thermostat verlangt, also fordert dieser immer weiter, und der Wärmeerzeuger läuft für das übrige Haus weiter.</translation>
</message>
<message>
<source>Fit plain lockshield or wheel-head valves to the radiator in the thermostat's room, left open.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Bauen Sie am Heizkörper im Raum des Thermostats einfache Ventile ohne Thermostatkopf ein und lassen Sie sie offen.</translation>
</message>
<message>
<source>A relief valve of a mains-fed store whose discharge reaches its end without passing a tundish. Stores of 15 litres or less are outside this rule, as is the heating's safety valve.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Ein Sicherheitsventil eines geschlossenen Speichers, dessen Abblaseleitung ihr Ende erreicht, ohne durch einen Ablauftrichter zu führen. Speicher bis 15 Liter fallen nicht unter diese Regel, ebenso wenig das Sicherheitsventil der Heizung.</translation>
</message>
<message>
<source>The tundish shows that the valve is letting by, which otherwise nobody notices until the store fails; its air gap keeps foul water from being drawn back into the drinking water; and it lets the pipe below run free, so that the valve can pass all that it must.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Der Ablauftrichter zeigt, dass das Ventil durchlässt, was sonst niemand merkt, bis der Speicher versagt; sein freier Luftweg verhindert, dass Schmutzwasser ins Trinkwasser zurückgesaugt wird; und er lässt das Rohr darunter frei laufen, sodass das Ventil alles durchlassen kann, was es muss.</translation>
</message>
<message>
<source>Cut a tundish into the discharge, in sight, lower than the valve and within 600 mm of it.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Setzen Sie einen Ablauftrichter in die Abblaseleitung, in Sicht, tiefer als das Ventil und innerhalb von 600 mm davon.</translation>
</message>
<message>
<source>A tundish of a store's relief valve that is said to be out of sight. Stores of 15 litres or less are outside this rule.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Ein Ablauftrichter eines Speicher-Sicherheitsventils, der laut Angabe außer Sicht ist. Speicher bis 15 Liter fallen nicht unter diese Regel.</translation>
</message>
<message>
<source>A relief valve that lets by shows it at the tundish and nowhere else. In a loft or behind a panel nobody sees the drip, and the fault behind it (a burst vessel, a thermostat that sticks) goes on until the store itself is the next thing to give way.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Ein Sicherheitsventil, das durchlässt, zeigt es am Ablauftrichter und sonst nirgends. Auf einem Dachboden oder hinter einer Verkleidung sieht niemand das Tropfen, und der Fehler dahinter (ein geplatztes Ausdehnungsgefäß, ein klemmender Thermostat) besteht weiter, bis als Nächstes der Speicher selbst nachgibt.</translation>
</message>
<message>
<source>Put the tundish where the household passes it, in the same room as the store and away from anything electrical. Where the people who live there could not notice it, consider an electronic warning.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Setzen Sie den Ablauftrichter dorthin, wo die Bewohner vorbeikommen, im selben Raum wie der Speicher und fern von allem Elektrischen. Wo die Bewohner ihn nicht bemerken könnten, erwägen Sie eine elektronische Warnung.</translation>
</message>
<message>
<source>More than 600 mm of pipe between a store's relief valve and its tundish. Exactly 600 mm passes.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Mehr als 600 mm Rohr zwischen dem Sicherheitsventil eines Speichers und seinem Ablauftrichter. Genau 600 mm genügen.</translation>
</message>
<message>
<source>Before the tundish the pipe runs under pressure and out of sight. The longer it is, the more it holds the valve back, and the easier a drip goes unseen.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Vor dem Ablauftrichter steht das Rohr unter Druck und ist nicht einzusehen. Je länger es ist, desto mehr hemmt es das Ventil, und desto leichter bleibt ein Tropfen unbemerkt.</translation>
</message>
<message>
<source>Move the tundish to within 600 mm of the valve, lower than it and in sight.</source>
<extracomment>checks/lessons/discharge</extracomment>
<translation>Versetzen Sie den Ablauftrichter auf höchstens 600 mm an das Ventil heran, tiefer als dieses und in Sicht.</translation>
</message>
<message>
<source>Two pipes that are not joined where they meet, and that cross within half a square of a bend, a port or a tee, or under 30 degrees, or that lie on one another. A square crossing away from those is clear: the sheet draws one pipe hopping over the other.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Zwei Rohre, die dort, wo sie sich treffen, nicht verbunden sind und sich weniger als ein halbes Feld neben einem Bogen, einem Anschluss oder einem T-Stück oder unter weniger als 30 Grad kreuzen, oder die aufeinander liegen. Eine rechtwinklige Kreuzung abseits davon ist klar: Das Blatt zeichnet ein Rohr im Sprung über das andere.</translation>
</message>
<message>
<source>Whoever builds from the drawing, or checks it by eye, takes such a place for a tee. Then flow and return are joined, or a vessel seems to be on water that it is not on.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Wer nach der Zeichnung baut oder sie mit dem Auge prüft, hält eine solche Stelle für ein T-Stück. Dann werden Vorlauf und Rücklauf verbunden, oder ein Ausdehnungsgefäß scheint an einem Wasser zu sitzen, an dem es nicht sitzt.</translation>
</message>
<message>
<source>Move a part or set a pipe's corners, so that the two cross squarely and well clear of bends and joints, or not at all. If they are meant to be joined, end one on the other.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Verschieben Sie ein Bauteil oder setzen Sie die Ecken eines Rohrs so, dass beide sich rechtwinklig und weit weg von Bögen und Verbindungen kreuzen oder gar nicht. Sollen sie verbunden sein, lassen Sie eines auf dem anderen enden.</translation>
</message>
<message>
<source>A heat source whose heat is uncontrolled, such as a solid-fuel fire, on the water of the coil of a mains-fed store, or behind a heat exchanger before it.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Ein Wärmeerzeuger mit nicht regelbarer Wärme, etwa ein Feuer mit festem Brennstoff, am Wasser der Heizschlange eines geschlossenen Speichers oder hinter einem Wärmeübertrager davor.</translation>
</message>
<message>
<source>Every guard of a mains-fed store works by stopping the heat. A fire that goes on burning when it is called off cannot be stopped, so sooner or later the store boils at mains pressure. Water that has nowhere to go needs an open vent, which a mains-fed store does not have.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Jeder Wächter eines geschlossenen Speichers wirkt, indem er die Wärme abstellt. Ein Feuer, das weiterbrennt, wenn nichts mehr gefordert ist, lässt sich nicht abstellen, also siedet der Speicher früher oder später unter Anschlussdruck. Wasser, das nirgends hin kann, braucht eine offene Entlüftung, und die hat ein geschlossener Speicher nicht.</translation>
</message>
<message>
<source>Heat a vented store with it instead, or a thermal store open to the air whose heat reaches the mains-fed water through an exchanger only.</source>
<extracomment>checks/lessons/store</extracomment>
<translation>Heizen Sie damit stattdessen einen offenen Speicher oder einen zur Luft hin offenen Wärmespeicher, dessen Wärme das Trinkwasser nur durch einen Wärmeübertrager erreicht.</translation>
</message>
<message>
<source>A heat source whose heat cannot be switched off, as a solid-fuel fire's, on water that reaches no open vent and no feed cistern. Sealed water behind a heat exchanger is not meant: the uncontrolled source then stands on the other side.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Wärmeerzeuger, dessen Wärme sich nicht abschalten lässt, wie die eines Feuers mit festem Brennstoff, an Wasser, das keine offene Entlüftung und keinen Vorlagebehälter erreicht. Geschlossenes Wasser hinter einem Wärmeübertrager ist nicht gemeint: Der nicht regelbare Wärmeerzeuger steht dann auf der anderen Seite.</translation>
</message>
<message>
<source>A fire goes on giving heat when the pump stops or the power fails. An open vent lets the steam away and a cistern makes up what is lost; a sealed circuit can do neither: the pressure climbs to the safety valve, which blows until there is no water left over the fire, and a stuck valve then means an explosion.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Feuer gibt weiter Wärme, wenn die Pumpe steht oder der Strom ausfällt. Eine offene Entlüftung führt den Dampf ab, und ein Behälter ersetzt, was verloren geht; ein geschlossener Kreis kann beides nicht: Der Druck steigt bis zum Sicherheitsventil, das abbläst, bis kein Wasser mehr über dem Feuer ist, und ein festsitzendes Ventil bedeutet dann eine Explosion.</translation>
</message>
<message>
<source>Put the uncontrolled heat source on an open-vented circuit of its own, with a vent and a cold feed that nothing can shut; join a sealed circuit to it only through a heat exchanger.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Setzen Sie den nicht regelbaren Wärmeerzeuger an einen eigenen offenen Kreis mit einer Entlüftung und einer Speiseleitung, die nichts schließen kann; verbinden Sie einen geschlossenen Kreis nur durch einen Wärmeübertrager damit.</translation>
</message>
<message>
<source>Parts joined to one another, or to a pipe that leads nowhere, but by no way to a heat source, a store or a main. A part that stands alone without any pipe is an open end instead.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Bauteile, die miteinander oder mit einem Rohr verbunden sind, das nirgendwohin führt, aber auf keinem Weg mit einem Wärmeerzeuger, einem Speicher oder einem Hausanschluss. Ein Bauteil, das ganz ohne Rohr allein steht, ist stattdessen ein nicht angeschlossenes Ende.</translation>
</message>
<message>
<source>Such a piece does nothing as drawn, and is judged for nothing: nearly always a pipe is missing, and the circuit it was meant for lacks what hangs on it.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Ein solches Stück tut, wie gezeichnet, nichts und wird für nichts beurteilt: Fast immer fehlt ein Rohr, und dem Kreis, für den es gedacht war, fehlt, was daran hängt.</translation>
</message>
<message>
<source>Draw the pipe that joins it, or take the piece off the sheet.</source>
<extracomment>checks/lessons/drawing_itself</extracomment>
<translation>Zeichnen Sie das Rohr, das es verbindet, oder nehmen Sie das Stück vom Blatt.</translation>
</message>
<message>
<source>In open-vented heating with a pump, a vent and a feed whose tees are more than 150 mm apart along the pipe, or that stand on no common pipe at all. Where hot water turns by gravity beside pumped heating, they may stand apart on its pipes, as long as no pump stands on every way from one to the other and the pumps' pressure between the two tees, solved in every situation, neither lifts the water in the vent to its end nor sucks it down to its tee.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>In einer offenen Heizung mit Pumpe eine Entlüftung und eine Speisung, deren T-Stücke am Rohr entlang mehr als 150 mm auseinander liegen oder an gar keinem gemeinsamen Rohr. Wo neben gepumpter Heizung Warmwasser durch Schwerkraft umläuft, dürfen sie an dessen Rohren auseinander liegen, solange nicht auf jedem Weg von der einen zur anderen eine Pumpe sitzt und der Pumpendruck zwischen beiden T-Stücken, in jedem Betriebszustand gelöst, das Wasser in der Entlüftung weder bis zu ihrem Ende hebt noch bis zu ihrem T-Stück hinabsaugt.</translation>
</message>
<message>
<source>The feed's tee is where a pump leaves the pressure as it is. At a vent close beside it the water stays level with the cistern's. Further along, the pump's pressure lifts the water in the vent or sucks it down, so that it runs over into the cistern or takes in air, and the circuit rusts.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Am T-Stück der Speisung lässt eine Pumpe den Druck, wie er ist. In einer Entlüftung dicht daneben bleibt das Wasser auf der Höhe des Behälters. Weiter weg hebt der Pumpendruck das Wasser in der Entlüftung oder saugt es hinab, sodass es in den Behälter überläuft oder Luft aufnimmt, und der Kreis rostet.</translation>
</message>
<message>
<source>Join both to the flow within 150 mm of one another, the vent first as the water goes, the feed next, then the pump.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Schließen Sie beide innerhalb von 150 mm voneinander an den Vorlauf an, in Fließrichtung zuerst die Entlüftung, dann die Speisung, dann die Pumpe.</translation>
</message>
<message>
<source>An open vent over a cistern other than one that feeds the water it vents.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Eine offene Entlüftung über einem anderen Behälter als einem, der das Wasser speist, das sie entlüftet.</translation>
</message>
<message>
<source>Whatever comes out of a vent falls into the cistern below. Over another cistern, hot or dirty heating water gets into water that is drawn at taps, and the circuit it came from is not refilled by it: one cistern overflows while the other must feed fresh, air-laden water.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Was aus einer Entlüftung kommt, fällt in den Behälter darunter. Über einem anderen Behälter gelangt heißes oder schmutziges Heizwasser in Wasser, das an Hähnen gezapft wird, und der Kreis, aus dem es kam, wird davon nicht wieder gefüllt: Ein Behälter läuft über, während der andere frisches, lufthaltiges Wasser nachspeisen muss.</translation>
</message>
<message>
<source>Bring the vent over the cistern that feeds the same water.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie die Entlüftung über den Behälter, der dasselbe Wasser speist.</translation>
</message>
<message>
<source>A pipe that falls anywhere on the way from a heat source's flow, or a store's hot side, up to its open vent. A level pipe is no dip, nor is the last turn down over the cistern, above the water. Where feed and vent may be one pipe, that pipe is judged.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein Rohr, das irgendwo auf dem Weg vom Vorlauf eines Wärmeerzeugers oder von der Warmseite eines Speichers hinauf zur offenen Entlüftung fällt. Ein waagerechtes Rohr ist keine Senke, ebenso wenig der letzte Bogen hinab über den Behälter, oberhalb des Wasserspiegels. Wo Speisung und Entlüftung ein einziges Rohr sein dürfen, wird dieses beurteilt.</translation>
</message>
<message>
<source>Air and steam only go up. In a dip they are trapped, water stands in the vent like a plug, and when the thermostat fails the steam cannot get out: pressure builds as if the vent were shut.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Luft und Dampf steigen nur. In einer Senke sind sie gefangen, Wasser steht wie ein Stopfen in der Entlüftung, und versagt der Thermostat, kann der Dampf nicht hinaus: Der Druck steigt, als wäre die Entlüftung zu.</translation>
</message>
<message>
<source>Run the vent so that it rises all the way from the heat source or store to above the cistern.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Führen Sie die Entlüftung so, dass sie vom Wärmeerzeuger oder Speicher bis über den Behälter durchweg ansteigt.</translation>
</message>
<message>
<source>A vented store whose water the cold main reaches by pipes, with no cistern between. A check valve or reducing valve on the way does not part them, since it lets the main through.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein offener Speicher, dessen Wasser der Hausanschluss durch Rohre erreicht, ohne Behälter dazwischen. Ein Rückflussverhinderer oder Druckminderer auf dem Weg trennt sie nicht, da er das Anschlusswasser durchlässt.</translation>
</message>
<message>
<source>A vented store is a thin vessel made for a few metres of water. Mains pressure bursts it, or drives water out of its vent without end; and hot water can get back into the main.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Ein offener Speicher ist ein dünner Behälter für einige Meter Wassersäule. Der Anschlussdruck sprengt ihn oder treibt ohne Ende Wasser aus seiner Entlüftung; und warmes Wasser kann in den Hausanschluss zurückgelangen.</translation>
</message>
<message>
<source>Feed it from a storage cistern above it, or fit a store made for mains pressure with all its safety devices.</source>
<extracomment>checks/lessons/open_vented</extracomment>
<translation>Speisen Sie ihn aus einem Vorlagebehälter darüber, oder bauen Sie einen für Anschlussdruck gebauten Speicher mit allen seinen Sicherheitseinrichtungen ein.</translation>
</message>
<message>
<source>A sealed circuit in which the water that is heated reaches no expansion vessel by a way that water can go out and come back, and none is built in. A check valve, a bypass valve or a reducing valve on the only way does not count as one: it lets water through one way at most. Water behind a heat exchanger is a body of its own and needs its own vessel.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein geschlossener Kreis, in dem das erwärmte Wasser kein Ausdehnungsgefäß auf einem Weg erreicht, auf dem Wasser hinaus und zurück kann, und keines eingebaut ist. Ein Rückflussverhinderer, ein Überströmventil oder ein Druckminderer auf dem einzigen Weg gilt nicht als eines: Er lässt Wasser höchstens in eine Richtung durch. Wasser hinter einem Wärmeübertrager ist ein eigenes Wasser und braucht ein eigenes Gefäß.</translation>
</message>
<message>
<source>Water swells as it is heated, by about 3 % from cold to 80 °C, and it hardly squeezes. With nowhere to swell, the pressure climbs until the safety valve lifts, every time it heats up; the water lost is made up with fresh, and sooner or later the valve sticks or leaks.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Wasser dehnt sich beim Erwärmen aus, von kalt bis 80 °C um etwa 3 %, und lässt sich kaum zusammendrücken. Kann es sich nirgends ausdehnen, steigt der Druck bei jedem Aufheizen, bis das Sicherheitsventil anspricht; das verlorene Wasser wird durch frisches ersetzt, und früher oder später klemmt das Ventil oder leckt.</translation>
</message>
<message>
<source>Join an expansion vessel to the heat source's return, near the pump's inlet, with nothing between that can shut or that lets water through one way only.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Schließen Sie am Rücklauf des Wärmeerzeugers, nahe am Pumpeneintritt, ein Ausdehnungsgefäß an, ohne etwas dazwischen, das schließen kann oder Wasser nur in eine Richtung durchlässt.</translation>
</message>
<message>
<source>Some positions of the valves leave the heated water of a sealed circuit with no expansion vessel, a built-in one counted. Every valve that can shut counts: by hand, by a motor, by a thermostatic head. A three-port valve never shuts both its legs. Where only secured valves (locked, sealed or capped) do it, it is advice.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Manche Stellungen der Ventile lassen das erwärmte Wasser eines geschlossenen Kreises ohne Ausdehnungsgefäß, ein eingebautes mitgezählt. Jedes Ventil, das schließen kann, zählt: von Hand, durch einen Motor, durch einen Thermostatkopf. Ein Dreiwegeventil schließt nie beide Wege. Wo nur gesicherte Ventile (abgeschlossen, plombiert oder mit Kappe) es tun, ist es eine Empfehlung.</translation>
</message>
<message>
<source>Heated water swells. Once the valves stand so that no vessel is left to take the swell, the pressure climbs within minutes until the safety valve lifts; if that sticks, something bursts. Nobody shuts such a valve on purpose: it is shut for a repair, and forgotten.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Erwärmtes Wasser dehnt sich aus. Stehen die Ventile so, dass kein Ausdehnungsgefäß bleibt, steigt der Druck binnen Minuten, bis das Sicherheitsventil anspricht; klemmt dieses, birst etwas. Niemand schließt ein solches Ventil mit Absicht: Es wird für eine Reparatur geschlossen und vergessen.</translation>
</message>
<message>
<source>Move the vessel's tee to a stretch between it and the heat source that nothing can shut, or take the valve out of the way to it. A valve kept for servicing the vessel must be secured open.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Versetzen Sie das T-Stück des Ausdehnungsgefäßes auf ein Stück zwischen ihm und dem Wärmeerzeuger, das nichts schließen kann, oder nehmen Sie das Ventil aus dem Weg dorthin. Ein Ventil zum Warten des Gefäßes muss gesichert offen sein (Kappenventil).</translation>
</message>
<message>
<source>A vessel whose tee a pump's water comes to before any emitter, coil, exchanger or separator: it stands on the outlet side. It is a fault where the computed pressure then falls below atmospheric at a high point, or below what keeps water above 100 °C from boiling. A vessel built into the same heat source as the pump is its maker's arrangement and is not judged.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Ausdehnungsgefäß, dessen T-Stück das Wasser einer Pumpe vor jeder Heizfläche, Heizschlange, jedem Wärmeübertrager und jeder Weiche erreicht: Es sitzt auf der Druckseite. Ein Mangel ist es, wo der berechnete Druck dann an einem Hochpunkt unter den Luftdruck fällt oder unter das, was Wasser über 100 °C am Sieden hindert. Ein Gefäß, das in denselben Wärmeerzeuger eingebaut ist wie die Pumpe, ist Sache des Herstellers und wird nicht beurteilt.</translation>
</message>
<message>
<source>Where the vessel joins, the pressure cannot change when the pump starts: the vessel is the fixed point of the circuit. On the inlet side, the pump's whole pressure is added to the rest. On the outlet side it is taken off instead, and at the top of the house the pressure may fall so far that air is drawn in through the vents, or that hot water boils.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Wo das Ausdehnungsgefäß anschließt, kann sich der Druck beim Anlaufen der Pumpe nicht ändern: Es ist der Festpunkt des Kreises. Auf der Saugseite kommt der ganze Pumpendruck zum übrigen Kreis hinzu. Auf der Druckseite wird er ihm weggenommen, und ganz oben im Haus kann der Druck so weit fallen, dass durch die Entlüfter Luft angesaugt wird oder heißes Wasser siedet.</translation>
</message>
<message>
<source>Move the vessel's tee to the return, close by the pump's inlet, or the pump to the other side of it.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Versetzen Sie das T-Stück des Ausdehnungsgefäßes an den Rücklauf nahe am Pumpeneintritt, oder die Pumpe auf die andere Seite davon.</translation>
</message>
<message>
<source>A vessel charged to less than the height of water above it plus the safety margin (a tenth of a bar under that still passes), or to more than the pressure the circuit is filled to. Charged to just the fill pressure it is advice: the vessel then holds no water in reserve.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein Ausdehnungsgefäß mit weniger Vordruck, als der Höhe des Wassers darüber plus Sicherheitszuschlag entspricht (ein Zehntel bar darunter genügt noch), oder mit mehr als dem Fülldruck des Kreises. Gerade der Fülldruck als Vordruck ist eine Empfehlung: Das Gefäß enthält dann keine Wasservorlage.</translation>
</message>
<message>
<source>The charge is the gas that pushes water back as the circuit cools. With too little, the vessel is full of water before anything is heated, and has no room left for the swell. With too much, no water gets in until the pressure is above the charge, so it holds no reserve: the first litre that is lost leaves the top radiators short of water and draws in air.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Der Vordruck ist das Gas, das Wasser zurückdrückt, wenn der Kreis abkühlt. Mit zu wenig ist das Gefäß voll Wasser, bevor etwas erwärmt wird, und hat keinen Raum mehr für die Ausdehnung. Mit zu viel kommt kein Wasser hinein, bevor der Druck über dem Vordruck liegt, also enthält es keine Vorlage: Der erste verlorene Liter lässt den obersten Heizkörpern Wasser fehlen und saugt Luft an.</translation>
</message>
<message>
<source>With the circuit empty of pressure at the vessel, set the charge to the static height (0.0981 bar a metre) plus the margin, and fill the circuit to a little more than that.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Stellen Sie bei drucklosem Kreis am Gefäß den Vordruck auf die statische Höhe (0,0981 bar je Meter) plus Zuschlag ein, und füllen Sie den Kreis auf etwas mehr als das.</translation>
</message>
<message>
<source>The vessels that heated water reaches cannot take up its swell and still hold their reserve when all is cold, before the pressure comes within half a bar of the safety valve; or, filled to the stated pressure, they have too little room left. Where there are several vessels, also if some positions of the valves leave the heat source with fewer of them than the water still joined to it needs; if only secured valves do that, it is advice.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Die Ausdehnungsgefäße, die erwärmtes Wasser erreicht, können dessen Ausdehnung nicht aufnehmen und zugleich kalt ihre Wasservorlage enthalten, bevor der Druck bis auf ein halbes bar an das Sicherheitsventil herankommt; oder sie haben, auf den angegebenen Druck gefüllt, zu wenig Raum übrig. Wo es mehrere Gefäße gibt, auch dann, wenn manche Stellungen der Ventile dem Wärmeerzeuger weniger davon lassen, als das noch mit ihm verbundene Wasser braucht; tun das nur gesicherte Ventile, ist es eine Empfehlung.</translation>
</message>
<message>
<source>A vessel that is too small is full before the water is hot. From then on the pressure climbs as if there were none: the safety valve weeps at every heating-up, somebody tops the circuit up with fresh water, and the fresh water brings oxygen that rusts the radiators from inside.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Ein zu kleines Gefäß ist voll, bevor das Wasser heiß ist. Von da an steigt der Druck, als gäbe es keines: Das Sicherheitsventil tropft bei jedem Aufheizen, jemand füllt frisches Wasser nach, und frisches Wasser bringt Sauerstoff, der die Heizkörper von innen rosten lässt.</translation>
</message>
<message>
<source>Fit the next size made that is large enough, or a second vessel beside it, joined where nothing can shut it off. If only the fill pressure is too high, fill to a lower one that still reaches the top of the circuit.</source>
<extracomment>checks/lessons/heat_source</extracomment>
<translation>Bauen Sie die nächste ausreichende Größe ein, oder ein zweites Gefäß daneben, wo nichts es absperren kann. Ist nur der Fülldruck zu hoch, füllen Sie auf einen niedrigeren, der noch bis ganz oben im Kreis reicht.</translation>
</message>
<message>
<source>A heating zone, or the radiators of a heating circuit together, that no room thermostat and no programmer can stop: none acts on a motor valve, a pump or a heat source that it cannot do without. Thermostatic heads alone are no control. One emitter that is left open on purpose, as a way round for the pump, is not meant; nor is one without any valve on the water of a heat source that cannot be switched off: it takes away the heat that must have somewhere to go.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Heizkreis, oder die Heizkörper eines Kreises zusammen, die kein Raumthermostat und keine Zeitschaltuhr abstellen kann: Keiner wirkt auf ein Motorventil, eine Pumpe oder einen Wärmeerzeuger, ohne den es nicht geht. Thermostatköpfe allein sind keine Regelung. Eine einzelne Heizfläche, die mit Absicht als Umweg für die Pumpe offen ist, ist nicht gemeint; ebenso wenig eine ohne jedes Ventil am Wasser eines nicht abschaltbaren Wärmeerzeugers: Sie führt die Wärme ab, die irgendwohin muss.</translation>
</message>
<message>
<source>A zone that nothing stops is heated whenever anything else is: in summer, when only the store calls, at night, and when the room has long been warm enough.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Heizkreis, den nichts abstellt, wird beheizt, wann immer etwas anderes beheizt wird: im Sommer, wenn nur der Speicher Wärme fordert, nachts, und wenn der Raum längst warm genug ist.</translation>
</message>
<message>
<source>Give the zone a motor valve (or a pump) of its own, and let a room thermostat and a programmer act on it.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Geben Sie dem Heizkreis ein eigenes Motorventil (oder eine Pumpe), und lassen Sie einen Raumthermostat und eine Zeitschaltuhr darauf wirken.</translation>
</message>
<message>
<source>A motor valve (or one leg of a three-port valve) that two zones depend on and that neither has a valve or a controlled pump of its own beside: two heating zones, two stores, heating together with hot water, or emitters in rooms of two room thermostats that both act on it.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Motorventil (oder ein Weg eines Dreiwegeventils), von dem zwei Verbraucher abhängen, ohne dass einer daneben ein eigenes Ventil oder eine geregelte Pumpe hat: zwei Heizkreise, zwei Speicher, Heizung zusammen mit Warmwasser, oder Heizflächen in Räumen zweier Raumthermostate, die beide darauf wirken.</translation>
</message>
<message>
<source>A valve is open or shut. When one zone calls, the other is heated with it, whether it calls or not; when hot water calls in summer, the radiators come on.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Ein Ventil ist offen oder zu. Fordert ein Verbraucher Wärme, wird der andere mitbeheizt, ob er fordert oder nicht; wird im Sommer Warmwasser gefordert, werden die Heizkörper warm.</translation>
</message>
<message>
<source>Give each zone a motor valve of its own, with its own thermostat.</source>
<extracomment>checks/lessons/circulation</extracomment>
<translation>Geben Sie jedem Heizkreis ein eigenes Motorventil mit eigenem Thermostat.</translation>
</message>
<message>
<source>taught in trade textbooks (City &amp; Guilds Textbook: Plumbing, Book 1, 2019): air release at every emitter, and automatic vents where air gathers, as at high points and the flow to a coil.</source>
<extracomment>checks/sources</extracomment>
<translation>In Fachbüchern gelehrt (City &amp; Guilds Textbook: Plumbing, Buch 1, 2019): Entlüftung an jeder Heizfläche und selbsttätige Entlüfter, wo sich Luft sammelt, etwa an Hochpunkten und im Vorlauf zu einer Heizschlange.</translation>
</message>
<message>
<source>Common practice, no source: balanced cold supplies for mixers on mains-fed stores.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle: druckgleiches Kaltwasser für Mischer an geschlossenen Speichern.</translation>
</message>
<message>
<source>Approved Document G (England), 2015 edition with 2016 amendments, requirement G3(4) and 3.65. A setting that the householder can change is no limit: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England), Ausgabe 2015 mit den Änderungen von 2016, Anforderung G3(4) und 3.65. Eine Einstellung, die der Bewohner ändern kann, ist keine Grenze: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Common practice, no source. Pressures by the solved network (Colebrook-White; Todini and Pilati, 1988).</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle. Drücke nach dem gelösten Netz (Colebrook-White; Todini und Pilati, 1988).</translation>
</message>
<message>
<source>Common practice, no source: a bath takes about 100 litres.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle: Ein Vollbad braucht etwa 100 Liter.</translation>
</message>
<message>
<source>Hydrostatics: still water that is joined stands at one level. That it is looked for when a drawing is checked is common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Hydrostatik: Verbundenes ruhendes Wasser steht auf einer Höhe. Dass beim Prüfen einer Zeichnung darauf geachtet wird, ist übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS 5449 and WFR guidance to Schedule 2, as taught in trade textbooks: 4 % of the content, and 18 litres at least. Others take 5 % (from memory): sources disagree.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 und WFR-Richtlinie zu Schedule 2, wie in Fachbüchern gelehrt: 4 % des Inhalts und mindestens 18 Liter. Andere setzen 5 % an (aus dem Gedächtnis): Die Quellen sind uneins.</translation>
</message>
<message>
<source>WFR Schedule 2, paragraph 15 and its guidance (from memory); BS 5449: a separate feed and expansion cistern.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR Schedule 2, Absatz 15, und die Richtlinie dazu (aus dem Gedächtnis); BS 5449: ein eigener Speise- und Ausdehnungsbehälter.</translation>
</message>
<message>
<source>BS 5449, stores in sealed systems.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449, Speicher in geschlossenen Anlagen.</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, Schedule 2, paragraph 15 (paragraph from memory) and guidance to it; that a reducing valve is no check valve is common practice.</source>
<extracomment>checks/sources</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absatz 15 (Absatz aus dem Gedächtnis), und die Richtlinie dazu; dass ein Druckminderer kein Rückflussverhinderer ist, ist übliche Praxis.</translation>
</message>
<message>
<source>Common practice, no source: no draw-off between the check valve and a mains-fed store.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle: keine Entnahme zwischen Rückflussverhinderer und geschlossenem Speicher.</translation>
</message>
<message>
<source>BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks).</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 und BS EN 12828 mit nationalem Anhang (wie in Fachbüchern gelehrt).</translation>
</message>
<message>
<source>BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks): no valve in the cold feed.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 und BS EN 12828 mit nationalem Anhang (wie in Fachbüchern gelehrt): kein Ventil in der Speiseleitung.</translation>
</message>
<message>
<source>Common practice, no source: the maker's marks on the connections.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle: die Zeichen des Herstellers an den Anschlüssen.</translation>
</message>
<message>
<source>The least content is what the maker of the heat source states. That thermostatic heads count as shut: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Der Mindestinhalt ist, was der Hersteller des Wärmeerzeugers angibt. Dass Thermostatköpfe als geschlossen gelten: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraphs 15 and 24, with WFR guidance G24.2.</source>
<extracomment>checks/sources</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absätze 15 und 24, mit WFR-Richtlinie G24.2.</translation>
</message>
<message>
<source>Approved Document G, 3.18 and following (paragraph from memory): a non-self-resetting energy cut-out that acts on the motorised valve of the primary flow; that a two-port valve serves and a three-port valve does not is common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, 3.18 und folgende (Absatz aus dem Gedächtnis): ein nicht selbsttätig rückstellender Sicherheitstemperaturbegrenzer, der auf das Motorventil im Primärvorlauf wirkt; dass ein Zweiwegeventil taugt und ein Dreiwegeventil nicht, ist übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Approved Document G (England) 3.50 to 3.63; WFR guidance G19.3 and G19.4; BS EN 12828 for the heating's safety valve (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.50 bis 3.63; WFR-Richtlinie G19.3 und G19.4; BS EN 12828 für das Sicherheitsventil der Heizung (aus dem Gedächtnis).</translation>
</message>
<message>
<source>Approved Document G (England), Table 3.1 and 3.51, 3.58; WFR guidance G19.3d. For the heating's safety valve: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England), Tabelle 3.1 und 3.51, 3.58; WFR-Richtlinie G19.3d. Für das Sicherheitsventil der Heizung: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Common practice, no source with a clause; what Approved Document G (England) 3.50 to 3.63 says of the pipe leaves no room for a valve (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle mit Absatz; was Approved Document G (England) 3.50 bis 3.63 über das Rohr sagt, lässt keinen Raum für ein Ventil (aus dem Gedächtnis).</translation>
</message>
<message>
<source>Approved Document G (England) 3.60 to 3.63; WFR guidance G19.3e; NHBC Standards 8.1.9.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.60 bis 3.63; WFR-Richtlinie G19.3e; NHBC Standards 8.1.9.</translation>
</message>
<message>
<source>Approved Document G (England) 3.50 and 3.57; WFR guidance G19.3b is stricter after the tundish too: non-ferrous metal only. For the heating's safety valve: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.50 und 3.57; die WFR-Richtlinie G19.3b ist auch nach dem Ablauftrichter strenger: nur Nichteisenmetall. Für das Sicherheitsventil der Heizung: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Approved Document G (England) 3.54 and 3.56b; WFR guidance G19.3c (a self-draining gradient). For the heating's safety valve: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.54 und 3.56b; WFR-Richtlinie G19.3c (ein Gefälle, das sich selbst entleert). Für das Sicherheitsventil der Heizung: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Approved Document G (England), Table 3.1 and 3.58 with its worked example; WFR guidance G19.3d.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England), Tabelle 3.1 und 3.58 mit dem gerechneten Beispiel; WFR-Richtlinie G19.3d.</translation>
</message>
<message>
<source>taught in trade textbooks (City &amp; Guilds Textbook: Plumbing, Book 1, 2019): drain valves at all low points. That a metre or less holds nothing worth a drain: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>In Fachbüchern gelehrt (City &amp; Guilds Textbook: Plumbing, Buch 1, 2019): Entleerungen an allen Tiefpunkten. Dass ein Meter oder weniger keine Entleerung lohnt: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Common practice, no source (90 %). Flows by the solved network (Colebrook-White; Todini and Pilati, 1988).</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle (90 %). Volumenströme nach dem gelösten Netz (Colebrook-White; Todini und Pilati, 1988).</translation>
</message>
<message>
<source>Approved Document G, guidance to G3 (paragraph from memory); WFR guidance G19; BS EN 1491.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, Richtlinie zu G3 (Absatz aus dem Gedächtnis); WFR-Richtlinie G19; BS EN 1491.</translation>
</message>
<message>
<source>BS EN 12828:2012, Annex D (method and numbers from memory); Boyle's law where there are several vessels.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828:2012, Anhang D (Verfahren und Zahlen aus dem Gedächtnis); Gesetz von Boyle, wo es mehrere Gefäße gibt.</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2; that a circuit has a link at all: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absatz 24, mit Richtlinie G24.2; dass ein Kreis überhaupt eine Füllverbindung hat: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2; disconnected after filling.</source>
<extracomment>checks/sources</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absatz 24, mit Richtlinie G24.2; nach dem Füllen getrennt.</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2: a double check valve on the supply side, accepted for fluid category 3.</source>
<extracomment>checks/sources</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absatz 24, mit Richtlinie G24.2: ein doppelter Rückflussverhinderer auf der Zulaufseite, zugelassen für Flüssigkeitskategorie 3.</translation>
</message>
<message>
<source>BS 7593:2019, in-line filters.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 7593:2019, Filter im Rohr.</translation>
</message>
<message>
<source>Common practice, no source; that the zone's limit is what its maker states is its own data.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle; dass die Grenze des Heizkreises die seines Herstellers ist, steht in seinen eigenen Angaben.</translation>
</message>
<message>
<source>weight of water: City &amp; Guilds Textbook: Plumbing, Book 1, 2019; what floors are reckoned for: national annex to BS EN 1991-1-1, category A1 (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>Gewicht des Wassers: City &amp; Guilds Textbook: Plumbing, Buch 1, 2019; wofür Böden bemessen werden: nationaler Anhang zu BS EN 1991-1-1, Kategorie A1 (aus dem Gedächtnis).</translation>
</message>
<message>
<source>BS 5449, sealed systems; taught in trade textbooks (City &amp; Guilds Textbook: Plumbing, Book 1, 2019).</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449, geschlossene Anlagen; in Fachbüchern gelehrt (City &amp; Guilds Textbook: Plumbing, Buch 1, 2019).</translation>
</message>
<message>
<source>Approved Document L (England): controls wired so that with no demand for heating or hot water the appliance and the pump are off; City &amp; Guilds Textbook: Plumbing, Book 1 (2019), interlock.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document L (England): Regelung so verdrahtet, dass ohne Anforderung von Heizung oder Warmwasser Gerät und Pumpe aus sind; City &amp; Guilds Textbook: Plumbing, Buch 1 (2019), Verriegelung.</translation>
</message>
<message>
<source>common practice for solid fuel, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis bei festem Brennstoff, ohne Quelle.</translation>
</message>
<message>
<source>Common practice, no source. Flows by the solved network (Colebrook-White; Todini and Pilati, 1988).</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle. Volumenströme nach dem gelösten Netz (Colebrook-White; Todini und Pilati, 1988).</translation>
</message>
<message>
<source>Common practice, no source; the 0.1 m is this program's drawing format.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle; die 0,1 m stammen aus dem Zeichnungsformat dieses Programms.</translation>
</message>
<message>
<source>WFR guidance, Table 8.1. That the largest of several diameters governs: from memory.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR-Richtlinie, Tabelle 8.1. Dass von mehreren Durchmessern der größte gilt: aus dem Gedächtnis.</translation>
</message>
<message>
<source>Approved Document G (England), 3.64 (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England), 3.64 (aus dem Gedächtnis).</translation>
</message>
<message>
<source>WFR guidance G18.4: 50 °C within 30 seconds of opening; EN 806-2 likewise (from memory). HSG274 part 2 and BS 8558 allow a minute: sources disagree. Draw-off flows: EN 806-3:2006, Table 2.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR-Richtlinie G18.4: 50 °C binnen 30 Sekunden nach dem Öffnen; EN 806-2 ebenso (aus dem Gedächtnis). HSG274 Teil 2 und BS 8558 erlauben eine Minute: Die Quellen sind uneins. Entnahmearmaturendurchflüsse: EN 806-3:2006, Tabelle 2.</translation>
</message>
<message>
<source>Approved Document G, guidance to G3 (paragraph from memory); BS EN 60335-2-73 (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, Richtlinie zu G3 (Absatz aus dem Gedächtnis); BS EN 60335-2-73 (aus dem Gedächtnis).</translation>
</message>
<message>
<source>EN 806-3:2006, Table 2 (loading units); its Annex B for the design flow and 1 bar at the outlet (both from memory). NHBC Standards 8.1.5 (1.5 bar); 20 l/min: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>EN 806-3:2006, Tabelle 2 (Belastungswerte); deren Anhang B für den Auslegungsvolumenstrom und 1 bar an der Zapfstelle (beides aus dem Gedächtnis). NHBC Standards 8.1.5 (1,5 bar); 20 l/min: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Approved Document G (England) 3.56a; WFR guidance G19.3c.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.56a; WFR-Richtlinie G19.3c.</translation>
</message>
<message>
<source>Domestic Building Services Compliance Guide (England), 2013 edition, automatic bypass valves (from memory); for the place of the bypass: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Domestic Building Services Compliance Guide (England), Ausgabe 2013, automatische Überströmventile (aus dem Gedächtnis); für den Ort des Überströmventils: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks): no valve in the open vent.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 und BS EN 12828 mit nationalem Anhang (wie in Fachbüchern gelehrt): kein Ventil in der offenen Entlüftung.</translation>
</message>
<message>
<source>BS 5449, carried on by BS EN 12828 with its national annex: 22 mm (bore of 19 mm from memory); for a store's vent BS 6700, 19 mm (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449, fortgeführt von BS EN 12828 mit nationalem Anhang: 22 mm (19 mm Innendurchmesser aus dem Gedächtnis); für die Entlüftung eines Speichers BS 6700, 19 mm (aus dem Gedächtnis).</translation>
</message>
<message>
<source>BS EN 12828, 4.6, protection of sealed systems against overheating (clause from memory); BS 5449, sealed systems (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6, Schutz geschlossener Anlagen gegen Überhitzung (Absatz aus dem Gedächtnis); BS 5449, geschlossene Anlagen (aus dem Gedächtnis).</translation>
</message>
<message>
<source>Copper Development Association publication 150: noise above 1.5 m/s, wear above 2.5 m/s.</source>
<extracomment>checks/sources</extracomment>
<translation>Copper Development Association, Veröffentlichung 150: Geräusch über 1,5 m/s, Abtrag über 2,5 m/s.</translation>
</message>
<message>
<source>BS 5955-8, plastic pipework for hot water and heating (from memory); else common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5955-8, Kunststoffrohr für Warmwasser und Heizung (aus dem Gedächtnis); sonst übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS 5449 (as taught in trade textbooks): pump after vent and feed on the flow.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 (wie in Fachbüchern gelehrt): Pumpe hinter Entlüftung und Speisung im Vorlauf.</translation>
</message>
<message>
<source>Hydrostatics; BS 5449 (450 mm; as taught in trade textbooks); WFR guidance to Schedule 2, G20.3 (0.04 H + 0.15 m). The pump is taken at its shut-off head, the most it can put there.</source>
<extracomment>checks/sources</extracomment>
<translation>Hydrostatik; BS 5449 (450 mm; wie in Fachbüchern gelehrt); WFR-Richtlinie zu Schedule 2, G20.3 (0,04 H + 0,15 m). Die Pumpe ist mit ihrer Nullförderhöhe angesetzt, dem Höchsten, was sie dort aufbringen kann.</translation>
</message>
<message>
<source>Approved Document G, guidance to G3 (paragraph from memory): no valve between store and relief valve; WFR guidance G19; stores of 15 litres or less are outside the temperature relief rule.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, Richtlinie zu G3 (Absatz aus dem Gedächtnis): kein Ventil zwischen Speicher und Sicherheitsventil; WFR-Richtlinie G19; Speicher bis 15 Liter fallen nicht unter die Regel zum Temperatur-Sicherheitsventil.</translation>
</message>
<message>
<source>Approved Document G, 3.18 and following (paragraph from memory): the valve is on the store itself, in its hottest water; BS EN 1490.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, 3.18 und folgende (Absatz aus dem Gedächtnis): Das Ventil sitzt am Speicher selbst, in dessen heißestem Wasser; BS EN 1490.</translation>
</message>
<message>
<source>BS EN 1490 and BS EN 1491; BS EN 806-2 (from memory), a supply stands within 80 % of a safety valve's setting.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 1490 und BS EN 1491; BS EN 806-2 (aus dem Gedächtnis): Der Zulauf steht innerhalb von 80 % des Ansprechdrucks eines Sicherheitsventils.</translation>
</message>
<message>
<source>BS EN 12828, 4.6.2 (from memory), each heat generator of a sealed system has a safety valve; a set pressure of 3 bar is usual in dwellings.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6.2 (aus dem Gedächtnis): Jeder Wärmeerzeuger einer geschlossenen Anlage hat ein Sicherheitsventil; in Wohnungen ist ein Ansprechdruck von 3 bar üblich.</translation>
</message>
<message>
<source>BS EN 12828, 4.6 and BS 5449: in the flow, close to the heat source. The metre: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6 und BS 5449: im Vorlauf, nahe am Wärmeerzeuger. Der Meter: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS EN 12828, 4.6: no shut-off between the heat generator and its safety valve.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6: keine Absperrung zwischen dem Wärmeerzeuger und seinem Sicherheitsventil.</translation>
</message>
<message>
<source>BS EN 12828, 4.6.2 (from memory): no part of the system may see more than it is made for; 3 bar is usual in dwellings (BS 5449).</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6.2 (aus dem Gedächtnis): Kein Teil der Anlage darf mehr ausgesetzt sein, als er aushält; in Wohnungen sind 3 bar üblich (BS 5449).</translation>
</message>
<message>
<source>BS EN 12828, 4.6.2.2 (from memory): the safety valve passes the whole output of its heat generator; capacities to BS EN ISO 4126-1.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6.2.2 (aus dem Gedächtnis): Das Sicherheitsventil bläst die ganze Leistung seines Wärmeerzeugers ab; Abblaseleistungen nach BS EN ISO 4126-1.</translation>
</message>
<message>
<source>Common practice, no source: a single check valve by the pump of a secondary return.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle: ein einzelner Rückflussverhinderer bei der Pumpe einer Zirkulation.</translation>
</message>
<message>
<source>The heat source's own least flow; friction by Colebrook-White, network by Todini and Pilati, 1988. Resistances that the drawing does not give: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Der eigene Mindestvolumenstrom des Wärmeerzeugers; Reibung nach Colebrook-White, Netz nach Todini und Pilati, 1988. Widerstände, die die Zeichnung nicht nennt: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraphs 10 and 11, and guidance G11 (from memory); that it stands where the main comes in: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Water Supply (Water Fittings) Regulations 1999, Schedule 2, Absätze 10 und 11, und Richtlinie G11 (aus dem Gedächtnis); dass es dort sitzt, wo der Hausanschluss hereinkommt: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS EN 12897, a store's highest working pressure; BS EN 1567, reducing valves; that mains rise at night is common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12897, Höchstdruck eines Speichers; BS EN 1567, Druckminderer; dass der Druck nachts steigt, ist übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Approved Document G, 3.18 (paragraph from memory), the first of three guards; Approved Document L, a thermostat on every store; WFR guidance G18.1.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, 3.18 (Absatz aus dem Gedächtnis), der erste von drei Wächtern; Approved Document L, ein Thermostat an jedem Speicher; WFR-Richtlinie G18.1.</translation>
</message>
<message>
<source>WFR guidance G18.2; HSG274 part 2; ACOP L8.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR-Richtlinie G18.2; HSG274 Teil 2; ACOP L8.</translation>
</message>
<message>
<source>WFR guidance to Schedule 2, G20.3; Approved Document G (England), G3; BS 6700 (from memory).</source>
<extracomment>checks/sources</extracomment>
<translation>WFR-Richtlinie zu Schedule 2, G20.3; Approved Document G (England), G3; BS 6700 (aus dem Gedächtnis).</translation>
</message>
<message>
<source>WFR guidance to Schedule 2, G20.3; Approved Document G (England), G3: no valve in the vent.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR-Richtlinie zu Schedule 2, G20.3; Approved Document G (England), G3: kein Ventil in der Entlüftung.</translation>
</message>
<message>
<source>Approved Document G, guidance to G3, and WFR guidance G17 to G19 (paragraphs from memory): expansion is taken up by a vessel or an air gap inside the store.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, Richtlinie zu G3, und WFR-Richtlinie G17 bis G19 (Absätze aus dem Gedächtnis): Die Ausdehnung nimmt ein Gefäß oder ein Luftraum im Speicher auf.</translation>
</message>
<message>
<source>Approved Document G, guidance to G3 (paragraph from memory); no valve between a store and its vessel is common practice.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, Richtlinie zu G3 (Absatz aus dem Gedächtnis); dass zwischen Speicher und Ausdehnungsgefäß kein Ventil sitzt, ist übliche Praxis.</translation>
</message>
<message>
<source>Common practice, no source: a charge equal to the reducing valve's setting, or up to 0.2 bar below.</source>
<extracomment>checks/sources</extracomment>
<translation>Übliche Praxis, ohne Quelle: ein Vordruck gleich der Einstellung des Druckminderers oder bis zu 0,2 bar darunter.</translation>
</message>
<message>
<source>The gas law (Boyle) on absolute pressures; the final pressure of 0.8 of the relief valve after BS EN 806-2 (from memory); the 10 litres and the charge are common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>Das Gasgesetz (Boyle) mit absoluten Drücken; der Enddruck von 0,8 des Sicherheitsventils nach BS EN 806-2 (aus dem Gedächtnis); die 10 Liter und der Vordruck sind übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>Approved Document G, 3.18 (paragraph from memory), water stored above 100 °C is to be prevented by such a device; BS EN 1490, temperature relief valves.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, 3.18 (Absatz aus dem Gedächtnis): Gespeichertes Wasser über 100 °C ist durch eine solche Einrichtung zu verhindern; BS EN 1490, Temperatur-Sicherheitsventile.</translation>
</message>
<message>
<source>City &amp; Guilds Textbook: Plumbing, Book 1 (2019), controls for heating: thermostatic heads on the radiators of rooms without a room thermostat.</source>
<extracomment>checks/sources</extracomment>
<translation>City &amp; Guilds Textbook: Plumbing, Buch 1 (2019), Heizungsregelung: Thermostatköpfe an den Heizkörpern von Räumen ohne Raumthermostat.</translation>
</message>
<message>
<source>Approved Document G (England) 3.54 and 3.55; WFR guidance G19.3.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.54 und 3.55; WFR-Richtlinie G19.3.</translation>
</message>
<message>
<source>Approved Document G (England) 3.54 and 3.55; WFR guidance G19.3; NHBC Standards 8.1.9.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.54 und 3.55; WFR-Richtlinie G19.3; NHBC Standards 8.1.9.</translation>
</message>
<message>
<source>Approved Document G (England) 3.54, from the 2010 edition; WFR guidance G19.3a. Editions before 2010 said 500 mm; the program uses 600 mm.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G (England) 3.54, ab der Ausgabe 2010; WFR-Richtlinie G19.3a. Ausgaben vor 2010 sagten 500 mm; das Programm nimmt 600 mm.</translation>
</message>
<message>
<source>Approved Document G, guidance to G3 (paragraph from memory): unvented stores are not for heat without automatic control; common practice for solid fuel.</source>
<extracomment>checks/sources</extracomment>
<translation>Approved Document G, Richtlinie zu G3 (Absatz aus dem Gedächtnis): Geschlossene Speicher sind nicht für Wärme ohne selbsttätige Regelung; bei festem Brennstoff übliche Praxis.</translation>
</message>
<message>
<source>BS 5449 and BS EN 12828 (from memory); for solid fuel: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 und BS EN 12828 (aus dem Gedächtnis); bei festem Brennstoff: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS 5449 (150 mm; as taught in trade textbooks). Beside gravity hot water: hydrostatics.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 (150 mm; wie in Fachbüchern gelehrt). Neben Warmwasser durch Schwerkraft: Hydrostatik.</translation>
</message>
<message>
<source>WFR guidance to Schedule 2, G20.3 (the vent ends over its own cistern); BS 5449.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR-Richtlinie zu Schedule 2, G20.3 (die Entlüftung endet über ihrem eigenen Behälter); BS 5449.</translation>
</message>
<message>
<source>BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks): the open vent rises continuously.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 5449 und BS EN 12828 mit nationalem Anhang (wie in Fachbüchern gelehrt): Die offene Entlüftung steigt stetig.</translation>
</message>
<message>
<source>WFR Schedule 2 and Approved Document G (England), G3: a vented store is fed from a cistern.</source>
<extracomment>checks/sources</extracomment>
<translation>WFR Schedule 2 und Approved Document G (England), G3: Ein offener Speicher wird aus einem Behälter gespeist.</translation>
</message>
<message>
<source>BS EN 12828, expansion vessels of sealed systems (clause from memory); BS 7074-1.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, Ausdehnungsgefäße geschlossener Anlagen (Absatz aus dem Gedächtnis); BS 7074-1.</translation>
</message>
<message>
<source>BS EN 12828, 4.6.3 (from memory): a vessel may be isolated only by a valve secured against unintended shutting; BS 7074-1: no valve in the vessel's connecting pipe.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, 4.6.3 (aus dem Gedächtnis): Ein Ausdehnungsgefäß darf nur durch ein gegen unbeabsichtigtes Schließen gesichertes Ventil absperrbar sein; BS 7074-1: kein Ventil im Anschlussrohr des Gefäßes.</translation>
</message>
<message>
<source>BS 7074-1 and BS 5449: the vessel on the return, close to the pump's inlet.</source>
<extracomment>checks/sources</extracomment>
<translation>BS 7074-1 und BS 5449: das Ausdehnungsgefäß am Rücklauf, nahe am Pumpeneintritt.</translation>
</message>
<message>
<source>BS EN 12828, Annex D (from memory): charge at least static height, vapour and 0.3 bar; BS 7074-1: not less than the static head. The tenth of a bar: common practice, no source.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828, Anhang D (aus dem Gedächtnis): Vordruck mindestens statische Höhe, Dampfdruck und 0,3 bar; BS 7074-1: nicht weniger als die statische Höhe. Das Zehntel bar: übliche Praxis, ohne Quelle.</translation>
</message>
<message>
<source>BS EN 12828:2012, Annex D (method and numbers from memory); BS 5449 and BS 7074-1 as a cross-check.</source>
<extracomment>checks/sources</extracomment>
<translation>BS EN 12828:2012, Anhang D (Verfahren und Zahlen aus dem Gedächtnis); BS 5449 und BS 7074-1 als Gegenprobe.</translation>
</message>
<message>
<source>City &amp; Guilds Textbook: Plumbing, Book 1 (2019), controls for heating: each space-heating circuit has time control of its own and a room thermostat.</source>
<extracomment>checks/sources</extracomment>
<translation>City &amp; Guilds Textbook: Plumbing, Buch 1 (2019), Heizungsregelung: Jeder Heizkreis hat eine eigene Zeitsteuerung und einen Raumthermostat.</translation>
</message>
<message>
<source>City &amp; Guilds Textbook: Plumbing, Book 1 (2019), controls for heating: each circuit is controlled by itself.</source>
<extracomment>checks/sources</extracomment>
<translation>City &amp; Guilds Textbook: Plumbing, Buch 1 (2019), Heizungsregelung: Jeder Kreis wird für sich geregelt.</translation>
</message>
<message>
<source>England: approved documents, the guidance to the water regulations, British and European standards</source>
<extracomment>rules</extracomment>
<translation>England: Approved Documents, Richtlinien zu den Water Regulations, britische und europäische Normen</translation>
</message>
<message>
<source>BS 5449, carried on by BS EN 12828 national annex (bore from memory)</source>
<extracomment>rules</extracomment>
<translation>BS 5449, fortgeführt vom nationalen Anhang zu BS EN 12828 (Innendurchmesser aus dem Gedächtnis)</translation>
</message>
<message>
<source>BS 5449 (as taught in trade textbooks)</source>
<extracomment>rules</extracomment>
<translation>BS 5449 (wie in Fachbüchern gelehrt)</translation>
</message>
<message>
<source>BS 5449 and WFR guidance to Schedule 2 (as taught in trade textbooks); others take 5 % (from memory): sources disagree</source>
<extracomment>rules</extracomment>
<translation>BS 5449 und WFR-Richtlinie zu Schedule 2 (wie in Fachbüchern gelehrt); andere setzen 5 % an (aus dem Gedächtnis): Die Quellen sind uneins</translation>
</message>
<message>
<source>BS 5449 (as taught in the trade)</source>
<extracomment>rules</extracomment>
<translation>BS 5449 (wie im Handwerk gelehrt)</translation>
</message>
<message>
<source>common practice, no source: what a bath takes</source>
<extracomment>rules</extracomment>
<translation>übliche Praxis, ohne Quelle: was eine Badewanne braucht</translation>
</message>
<message>
<source>Approved Document G (England) 3.58: each further size of D2 carries a further 9 m</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England) 3.58: Jede weitere Größe von D2 trägt weitere 9 m</translation>
</message>
<message>
<source>Approved Document G (England) 3.54, from the 2010 edition; WFR guidance G19.3a</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England) 3.54, aus der Ausgabe 2010; WFR-Richtlinie G19.3a</translation>
</message>
<message>
<source>Approved Document G (England) 3.56a; WFR guidance G19.3c</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England) 3.56a; WFR-Richtlinie G19.3c</translation>
</message>
<message>
<source>Approved Document G (England) 3.56b: 1 in 200. For the heating's safety valve: common practice, no source</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England) 3.56b: 1 zu 200. Für das Sicherheitsventil der Heizung: übliche Praxis, ohne Quelle</translation>
</message>
<message>
<source>Approved Document G (England), requirement G3(3): stores of 15 litres or less (number of the requirement from memory)</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England), Anforderung G3(3): Speicher bis 15 Liter (Nummer der Anforderung aus dem Gedächtnis)</translation>
</message>
<message>
<source>sizes</source>
<extracomment>rules</extracomment>
<translation>Größen</translation>
</message>
<message>
<source>Approved Document G (England) 3.59: one pipe for several stores is at least one size larger than the largest of theirs</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England) 3.59: Eine Leitung für mehrere Speicher ist mindestens eine Größe größer als die größte von ihnen</translation>
</message>
<message>
<source>mm, mm, mm, m, m</source>
<extracomment>rules</extracomment>
<translation>mm, mm, mm, m, m</translation>
</message>
<message>
<source>Approved Document G (England), Table 3.1, 2010 edition and the 2015 edition with 2016 amendments; outlets G 1/2, G 3/4 and G 1 by the tube that fits them</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England), Tabelle 3.1, Ausgabe 2010 und Ausgabe 2015 mit Änderungen 2016; Auslässe G 1/2, G 3/4 und G 1 nach dem passenden Rohr</translation>
</message>
<message>
<source>Approved Document G (England) 3.60 to 3.63; WFR guidance G19.3e; NHBC Standards 8.1.9</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England) 3.60 bis 3.63; WFR-Richtlinie G19.3e; NHBC Standards 8.1.9</translation>
</message>
<message>
<source>Approved Document G, guidance to G3: stores of 15 litres or less are outside the rules for unvented stores</source>
<extracomment>rules</extracomment>
<translation>Approved Document G, Richtlinie zu G3: Speicher bis 15 Liter fallen nicht unter die Regeln für geschlossene Speicher</translation>
</message>
<message>
<source>BS EN 1490 (from memory): temperature relief valves open from 90 to 95 °C; Approved Document G: stored water never above 100 °C</source>
<extracomment>rules</extracomment>
<translation>BS EN 1490 (aus dem Gedächtnis): Temperatur-Sicherheitsventile öffnen bei 90 bis 95 °C; Approved Document G: gespeichertes Wasser nie über 100 °C</translation>
</message>
<message>
<source>BS EN 806-2 (from memory): the pressure before a safety valve stays within 80 % of its setting</source>
<extracomment>rules</extracomment>
<translation>BS EN 806-2 (aus dem Gedächtnis): Der Druck vor einem Sicherheitsventil bleibt innerhalb von 80 % seines Ansprechdrucks</translation>
</message>
<message>
<source>BS EN 806-2 (from memory), carried over: the expansion relief valve must not weep</source>
<extracomment>rules</extracomment>
<translation>BS EN 806-2 (aus dem Gedächtnis), übertragen: Das Ausdehnungs-Sicherheitsventil darf nicht tropfen</translation>
</message>
<message>
<source>common practice, no source: a secondary circuit of more than 10 litres needs a larger vessel</source>
<extracomment>rules</extracomment>
<translation>übliche Praxis, ohne Quelle: Ein Zirkulationskreis von mehr als 10 Litern braucht ein größeres Gefäß</translation>
</message>
<message>
<source>BS 5449: a coil in a sealed circuit is fit for the safety valve's setting plus 0.35 bar</source>
<extracomment>rules</extracomment>
<translation>BS 5449: Eine Heizschlange im geschlossenen Kreis hält den Ansprechdruck des Sicherheitsventils und 0,35 bar mehr aus</translation>
</message>
<message>
<source>Approved Document G (England), 2015 edition with 2016 amendments, requirement G3(4) and 3.65</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England), Ausgabe 2015 mit Änderungen 2016, Anforderung G3(4) und 3.65</translation>
</message>
<message>
<source>WFR guidance G18.2; HSG274 part 2; ACOP L8</source>
<extracomment>rules</extracomment>
<translation>WFR-Richtlinie G18.2; HSG274 Teil 2; ACOP L8</translation>
</message>
<message>
<source>Approved Document G (England), 3.64 (from memory)</source>
<extracomment>rules</extracomment>
<translation>Approved Document G (England), 3.64 (aus dem Gedächtnis)</translation>
</message>
<message>
<source>EN 806-3:2006, simplified method (from memory)</source>
<extracomment>rules</extracomment>
<translation>EN 806-3:2006, vereinfachtes Verfahren (aus dem Gedächtnis)</translation>
</message>
<message>
<source>NHBC Standards 8.1.5; common practice for a mains-fed store</source>
<extracomment>rules</extracomment>
<translation>NHBC Standards 8.1.5; übliche Praxis bei einem geschlossenen Speicher</translation>
</message>
<message>
<source>common practice for a mains-fed store, no source</source>
<extracomment>rules</extracomment>
<translation>übliche Praxis bei einem geschlossenen Speicher, ohne Quelle</translation>
</message>
<message>
<source>s</source>
<extracomment>rules</extracomment>
<translation>s</translation>
</message>
<message>
<source>WFR guidance G18.4; HSG274 part 2 and BS 8558 allow a minute: sources disagree</source>
<extracomment>rules</extracomment>
<translation>WFR-Richtlinie G18.4; HSG274 Teil 2 und BS 8558 erlauben eine Minute: Die Quellen sind uneins</translation>
</message>
<message>
<source>loading units of 0.1 l/s</source>
<extracomment>rules</extracomment>
<translation>Belastungswerte zu 0,1 l/s</translation>
</message>
<message>
<source>EN 806-3:2006, Table 2</source>
<extracomment>rules</extracomment>
<translation>EN 806-3:2006, Tabelle 2</translation>
</message>
<message>
<source>WFR guidance, Table 8.1</source>
<extracomment>rules</extracomment>
<translation>WFR-Richtlinie, Tabelle 8.1</translation>
</message>
<message>
<source>BS EN 12828, 4.6, and BS 5449: close to the heat source; the metre: common practice, no source</source>
<extracomment>rules</extracomment>
<translation>BS EN 12828, 4.6, und BS 5449: nahe am Wärmeerzeuger; der Meter: übliche Praxis, ohne Quelle</translation>
</message>
<message>
<source>BS 5955-8, plastic pipework for hot water and heating (from memory)</source>
<extracomment>rules</extracomment>
<translation>BS 5955-8, Kunststoffrohr für Warmwasser und Heizung (aus dem Gedächtnis)</translation>
</message>
<message>
<source>Copper Development Association publication 150: noise above 1.5 m/s (1.0 m/s up to 50 mm: CIBSE Guide B, 1986)</source>
<extracomment>rules</extracomment>
<translation>Copper Development Association, Veröffentlichung 150: Geräusche über 1,5 m/s (1,0 m/s bis 50 mm: CIBSE Guide B, 1986)</translation>
</message>
<message>
<source>European standards only</source>
<extracomment>rules</extracomment>
<translation>Nur europäische Normen</translation>
</message>
<message>
<source>EN 12897 and EN 806-2 (from memory): no store is left out for its size</source>
<extracomment>rules</extracomment>
<translation>EN 12897 und EN 806-2 (aus dem Gedächtnis): Kein Speicher ist seiner Größe wegen ausgenommen</translation>
</message>
<message>
<source>EN 1490 (from memory): temperature relief valves open from 90 to 95 °C</source>
<extracomment>rules</extracomment>
<translation>EN 1490 (aus dem Gedächtnis): Temperatur-Sicherheitsventile öffnen bei 90 bis 95 °C</translation>
</message>
<message>
<source>EN 806-2 (from memory): the pressure before a safety valve stays within 80 % of its setting</source>
<extracomment>rules</extracomment>
<translation>EN 806-2 (aus dem Gedächtnis): Der Druck vor einem Sicherheitsventil bleibt innerhalb von 80 % seines Ansprechdrucks</translation>
</message>
<message>
<source>EN 806-2 (from memory), carried over: the expansion relief valve must not weep</source>
<extracomment>rules</extracomment>
<translation>EN 806-2 (aus dem Gedächtnis), übertragen: Das Ausdehnungs-Sicherheitsventil darf nicht tropfen</translation>
</message>
<message>
<source>EN 806-2:2005, hot water temperatures (from memory)</source>
<extracomment>rules</extracomment>
<translation>EN 806-2:2005, Warmwassertemperaturen (aus dem Gedächtnis)</translation>
</message>
<message>
<source>EN 806-2 (from memory)</source>
<extracomment>rules</extracomment>
<translation>EN 806-2 (aus dem Gedächtnis)</translation>
</message>
<message>
<source>EN 12828, 4.6: close to the heat source; the metre: common practice, no source</source>
<extracomment>rules</extracomment>
<translation>EN 12828, 4.6: nahe am Wärmeerzeuger; der Meter: übliche Praxis, ohne Quelle</translation>
</message>
<message>
<source>The kitchen mixer gets its cold straight from the main, for drinking, and its hot from the store.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Mischer in der Küche bekommt sein Kaltwasser zum Trinken geradewegs vom Hausanschluss und sein Warmwasser aus dem Speicher.</translation>
</message>
<message>
<source>The blending valve is turned up because the bath takes so long to fill hot, in a house that is new.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Mischventil wird höher gestellt, weil das Einlassen eines heißen Bads so lange dauert, und das Haus ist neu.</translation>
</message>
<message>
<source>The bypass is screwed right in, so that it stops whistling.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Überströmventil wird ganz zugedreht, damit es nicht mehr pfeift.</translation>
</message>
<message>
<source>A radiator is put into the loft, or a shower there, and nobody asks how high the cistern's water stands.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Heizkörper oder eine Dusche kommt unters Dach, und niemand fragt, wie hoch das Wasser im Behälter steht.</translation>
</message>
<message>
<source>Radiators were added over the years, and the cistern is still the one of the first two rooms.</source>
<extracomment>lessons/slips</extracomment>
<translation>Über die Jahre kamen Heizkörper hinzu, und der Behälter ist noch der für die ersten zwei Räume.</translation>
</message>
<message>
<source>One cistern in the loft is enough, it is thought, and the small one is saved.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Behälter auf dem Dachboden genügt, denkt man, und spart den kleinen ein.</translation>
</message>
<message>
<source>An old store is kept when the open-vented heating is sealed, and nobody asks what its coil was made for.</source>
<extracomment>lessons/slips</extracomment>
<translation>Beim Umbau der offenen Heizung zu einer geschlossenen bleibt der alte Speicher, und niemand fragt, wofür seine Heizschlange gebaut ist.</translation>
</message>
<message>
<source>The check valve is left off: the inlet group is made up of single parts, and this one looks like a joint.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Rückflussverhinderer wird weggelassen: Die Sicherheitsgruppe ist aus Einzelteilen gebaut, und dieses sieht aus wie eine Verschraubung.</translation>
</message>
<message>
<source>The bathroom's cold is teed off where the pipe is easiest to reach: past the check valve, by the store.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Kaltwasser des Bads wird dort abgezweigt, wo das Rohr am leichtesten zu erreichen ist: hinter dem Rückflussverhinderer, beim Speicher.</translation>
</message>
<message>
<source>A check valve is put into the cold feed, so that no warm water comes up into the cistern.</source>
<extracomment>lessons/slips</extracomment>
<translation>In die Speiseleitung wird ein Rückflussverhinderer gesetzt, damit kein warmes Wasser in den Behälter aufsteigt.</translation>
</message>
<message>
<source>A service valve is put into the cold feed, so that the cistern can be changed without draining down.</source>
<extracomment>lessons/slips</extracomment>
<translation>In die Speiseleitung wird ein Wartungsventil gesetzt, damit der Behälter ohne Entleeren getauscht werden kann.</translation>
</message>
<message>
<source>Two pipes come down side by side, and nobody reads the marks on the connections.</source>
<extracomment>lessons/slips</extracomment>
<translation>Zwei Rohre kommen nebeneinander herunter, und niemand liest die Zeichen an den Anschlüssen.</translation>
</message>
<message>
<source>A heat pump takes the place of a heat source that could do with a few litres, and no buffer is fitted.</source>
<extracomment>lessons/slips</extracomment>
<translation>Eine Wärmepumpe ersetzt einen Wärmeerzeuger, der mit wenigen Litern auskam, und es wird kein Pufferspeicher eingebaut.</translation>
</message>
<message>
<source>The heating is filled through a plain valve piped to the main, to be opened when the gauge has fallen.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Heizung wird durch ein einfaches, fest mit dem Hausanschluss verrohrtes Ventil gefüllt, das man öffnet, wenn das Manometer gefallen ist.</translation>
</message>
<message>
<source>In the wiring centre the lead of the store's energy cut-out is put on the terminal of the rooms' valve.</source>
<extracomment>lessons/slips</extracomment>
<translation>In der Klemmleiste wird die Leitung des Sicherheitstemperaturbegrenzers auf die Klemme des Raumventils gelegt.</translation>
</message>
<message>
<source>The outlet dripped on the floor, so somebody plugged it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Austritt tropfte auf den Boden, also hat ihn jemand verschlossen.</translation>
</message>
<message>
<source>The roll of the next size down was in the van.</source>
<extracomment>lessons/slips</extracomment>
<translation>Im Wagen lag die Rolle der nächstkleineren Größe.</translation>
</message>
<message>
<source>A valve is put into the discharge pipe to stop a drip until somebody comes.</source>
<extracomment>lessons/slips</extracomment>
<translation>In die Abblaseleitung wird ein Ventil gesetzt, um ein Tropfen anzuhalten, bis jemand kommt.</translation>
</message>
<message>
<source>The pipe is ended where it was easy to drill through the wall, over the path, or it never leaves the cupboard.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Rohr endet dort, wo die Wand leicht zu durchbohren war, über dem Weg, oder es verlässt den Schrank gar nicht.</translation>
</message>
<message>
<source>Waste pipe is cheap, is in the van, and is taken for good enough, as it will hardly ever carry anything.</source>
<extracomment>lessons/slips</extracomment>
<translation>Abflussrohr ist billig, liegt im Wagen und gilt als gut genug, da es kaum je etwas führen wird.</translation>
</message>
<message>
<source>The hole through the wall comes out higher than the valve, so the pipe goes up to it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Loch durch die Wand sitzt höher als das Ventil, also steigt das Rohr dorthin.</translation>
</message>
<message>
<source>The store is moved to the loft, and its discharge follows the old route all round the house.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Speicher zieht auf den Dachboden um, und seine Abblaseleitung folgt dem alten Weg um das ganze Haus.</translation>
</message>
<message>
<source>In a bundle of pipes that look alike the return is joined to the flow.</source>
<extracomment>lessons/slips</extracomment>
<translation>In einem Bündel gleich aussehender Rohre wird der Rücklauf am Vorlauf angeschlossen.</translation>
</message>
<message>
<source>The last run was done in what was left of the small pipe, the long way round.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das letzte Stück wurde mit dem Rest des kleinen Rohrs ausgeführt, auf dem langen Weg.</translation>
</message>
<message>
<source>The inlet group is left off for want of room, and its relief valve with it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Aus Platzmangel wird die Sicherheitsgruppe weggelassen und mit ihr das Sicherheitsventil.</translation>
</message>
<message>
<source>The heating loses a little water, and whoever tops it up leaves the hose on for the next time.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Heizung verliert etwas Wasser, und wer sie nachfüllt, lässt den Schlauch für das nächste Mal dran.</translation>
</message>
<message>
<source>The heating is filled by a plain hose between two taps.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Heizung wird mit einem einfachen Schlauch zwischen zwei Hähnen gefüllt.</translation>
</message>
<message>
<source>The arrow on the body is overlooked, or it is turned so that the head faces the wall.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Pfeil auf dem Gehäuse wird übersehen, oder das Bauteil wird so gedreht, dass der Kopf zur Wand zeigt.</translation>
</message>
<message>
<source>Floor pipes are joined to the radiators' circuit for the time being, until the mixing set comes.</source>
<extracomment>lessons/slips</extracomment>
<translation>Fußbodenrohre werden vorläufig an den Kreis der Heizkörper angeschlossen, bis die Mischgruppe kommt.</translation>
</message>
<message>
<source>The gauge broke off when the vessel was changed, and the hole was closed with a plug.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Manometer brach ab, als das Ausdehnungsgefäß getauscht wurde, und das Loch wurde mit einem Stopfen verschlossen.</translation>
</message>
<message>
<source>The thermostat is left out because the radiators have heads, or the heat source is wired to the programmer alone.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Thermostat wird weggelassen, weil die Heizkörper Köpfe haben, oder der Wärmeerzeuger wird allein an die Zeitschaltuhr angeschlossen.</translation>
</message>
<message>
<source>A solid-fuel fire takes the place of a heat source that could be switched off, and the pumped pipework stays as it was.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Feuer mit festem Brennstoff ersetzt einen abschaltbaren Wärmeerzeuger, und das gepumpte Rohrnetz bleibt, wie es war.</translation>
</message>
<message>
<source>The check valves of the circuits were saved on, as each has its own pump anyway.</source>
<extracomment>lessons/slips</extracomment>
<translation>An den Rückflussverhinderern der Kreise wurde gespart, da ohnehin jeder seine eigene Pumpe hat.</translation>
</message>
<message>
<source>A rise is written down with the wrong sign.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Anstieg wird mit falschem Vorzeichen aufgeschrieben.</translation>
</message>
<message>
<source>The store's thermostat is turned up as far as it goes, so that the water lasts for one more bath.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Thermostat des Speichers wird ganz aufgedreht, damit das Wasser noch für ein Bad reicht.</translation>
</message>
<message>
<source>A burnt-out immersion heater is changed for an old one from the van, which has a thermostat and nothing else.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein durchgebrannter Heizstab wird gegen einen alten aus dem Wagen getauscht, der einen Thermostat hat und sonst nichts.</translation>
</message>
<message>
<source>The main is never measured, or only by a tap that runs alone.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Hausanschluss wird nie gemessen, oder nur mit einem einzelnen laufenden Hahn.</translation>
</message>
<message>
<source>The pipe is drawn up to the part and let go a little short of it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Rohr wird zum Bauteil gezogen und kurz davor losgelassen.</translation>
</message>
<message>
<source>There was no room under the tundish, so the pipe turns as soon as it leaves it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Unter dem Ablauftrichter war kein Platz, also biegt das Rohr gleich ab.</translation>
</message>
<message>
<source>The bypass is left out because the old heat source did without, or somebody puts a valve beside it to set it by hand; on a rail that was always open a head is fitted.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Überströmventil wird weggelassen, weil der alte Wärmeerzeuger ohne auskam, oder jemand setzt daneben ein Ventil, um von Hand zu stellen; an einem immer offenen Handtuchheizkörper wird ein Thermostatkopf angebracht.</translation>
</message>
<message>
<source>A tee is left for the radiator that is to come one day, and nobody caps it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Für den Heizkörper, der eines Tages kommen soll, bleibt ein T-Stück, und niemand setzt eine Kappe darauf.</translation>
</message>
<message>
<source>The open vent dripped, or was in the way when the loft was boarded, and is taken out and its tee capped.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die offene Entlüftung tropfte oder war beim Verlegen der Dielen im Weg; sie wird herausgenommen und ihr T-Stück mit einer Kappe verschlossen.</translation>
</message>
<message>
<source>A valve is put into the open vent to stop it dripping, or by the heat source so that it can be changed.</source>
<extracomment>lessons/slips</extracomment>
<translation>In die offene Entlüftung wird ein Ventil gesetzt, damit sie nicht mehr tropft, oder eines beim Wärmeerzeuger, damit er getauscht werden kann.</translation>
</message>
<message>
<source>The vent carries no flow, so the small pipe that was left over is thought to do.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Entlüftung führt nichts, also soll das kleine Rohr genügen, das übrig war.</translation>
</message>
<message>
<source>A heat source made for open-vented heating is used again on the sealed circuit, without a cut-out that somebody must reset.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein für offene Heizung gebauter Wärmeerzeuger wird am geschlossenen Kreis weiterverwendet, ohne einen Begrenzer, den jemand entriegeln muss.</translation>
</message>
<message>
<source>The heating is piped in plastic, and the fitter runs it right up to the heat source instead of ending a metre before it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Heizung wird in Kunststoff verrohrt, und der Installateur führt ihn bis an den Wärmeerzeuger heran, statt einen Meter davor aufzuhören.</translation>
</message>
<message>
<source>The thermostat is wired to the zone valve, and the pump of the same circuit to the programmer alone.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Thermostat wird an das Zonenventil angeschlossen und die Pumpe desselben Kreises allein an die Zeitschaltuhr.</translation>
</message>
<message>
<source>The pump is put where there is room for it, between the tees of vent and feed.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Pumpe sitzt dort, wo Platz für sie ist, zwischen den T-Stücken von Entlüftung und Speisung.</translation>
</message>
<message>
<source>The vent is cut short under the rafters, or the pump is put into the return because that is cooler.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Entlüftung wird unter den Sparren zu kurz, oder die Pumpe kommt in den Rücklauf, weil er kühler ist.</translation>
</message>
<message>
<source>The pump is left at its lowest step, or a small one was at hand.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Pumpe bleibt auf der niedrigsten Stufe, oder eine kleine war zur Hand.</translation>
</message>
<message>
<source>A service valve is put before a relief valve, so that a dripping one can be changed.</source>
<extracomment>lessons/slips</extracomment>
<translation>Vor ein Sicherheitsventil wird ein Wartungsventil gesetzt, damit ein tropfendes getauscht werden kann.</translation>
</message>
<message>
<source>There is no room for the temperature relief valve at the store, so it is teed off the pipe beside it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Am Speicher ist kein Platz für das Temperatur-Sicherheitsventil, also wird es am Rohr daneben abgezweigt.</translation>
</message>
<message>
<source>The expansion relief valve is changed for one that was set for another store.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Ausdehnungs-Sicherheitsventil wird gegen eines getauscht, das für einen anderen Speicher eingestellt war.</translation>
</message>
<message>
<source>The heat source was bought without its valve set, and the pipe for the safety valve was never teed off.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Wärmeerzeuger wurde ohne seine Ventilgruppe gekauft, und das Rohr für das Sicherheitsventil wurde nie abgezweigt.</translation>
</message>
<message>
<source>There was no room at the heat source, so the safety valve went to where the pipe came out of the cupboard; or the strainer was put before it to keep its seat clean.</source>
<extracomment>lessons/slips</extracomment>
<translation>Am Wärmeerzeuger war kein Platz, also kam das Sicherheitsventil dorthin, wo das Rohr aus dem Schrank tritt; oder der Schmutzfänger wurde davor gesetzt, damit sein Sitz sauber bleibt.</translation>
</message>
<message>
<source>A valve is put below the safety valve so that it can be changed without draining down.</source>
<extracomment>lessons/slips</extracomment>
<translation>Unter das Sicherheitsventil wird ein Ventil gesetzt, damit es ohne Entleeren getauscht werden kann.</translation>
</message>
<message>
<source>The safety valve weeps, and is changed for one from the van that is set higher.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Sicherheitsventil tropft und wird gegen eines aus dem Wagen getauscht, das höher eingestellt ist.</translation>
</message>
<message>
<source>A larger heat source was fitted in the old one's place, and the old safety valve stayed.</source>
<extracomment>lessons/slips</extracomment>
<translation>Statt des alten kam ein größerer Wärmeerzeuger, und das alte Sicherheitsventil blieb.</translation>
</message>
<message>
<source>The pump of the secondary return is thought to hold the water back when it stands still.</source>
<extracomment>lessons/slips</extracomment>
<translation>Man meint, die Pumpe der Zirkulation halte das Wasser auf, wenn sie stillsteht.</translation>
</message>
<message>
<source>Both stores' discharges are run on from the tee in the size in which they come to it.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Abblaseleitungen beider Speicher sind ab dem T-Stück in der Nennweite weitergeführt, in der sie dort ankommen.</translation>
</message>
<message>
<source>The new heat source is small outside and has a narrow heat exchanger, and nobody reads how much water it needs.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der neue Wärmeerzeuger ist außen klein und hat einen engen Wärmeübertrager, und niemand liest, wie viel Wasser er braucht.</translation>
</message>
<message>
<source>The pressure at the tap seemed low enough on the day, and the reducing valve was saved on.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Druck am Hahn schien an dem Tag niedrig genug, und der Druckminderer wurde eingespart.</translation>
</message>
<message>
<source>The store's thermostat is left in its box: the programmer opens the valve, and the store gets hot.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Thermostat des Speichers bleibt in der Schachtel: Die Zeitschaltuhr öffnet das Ventil, und der Speicher wird warm.</translation>
</message>
<message>
<source>A house goes over to a sealed circuit, and the store's vent is taken out with the heating's.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Haus wird auf einen geschlossenen Kreis umgestellt, und mit der Entlüftung der Heizung wird die des Speichers entfernt.</translation>
</message>
<message>
<source>A valve is put by the store, so that a tap can be mended, below where the vent leaves.</source>
<extracomment>lessons/slips</extracomment>
<translation>Beim Speicher wird, damit ein Hahn repariert werden kann, ein Ventil eingesetzt, unterhalb der Stelle, an der die Entlüftung abgeht.</translation>
</message>
<message>
<source>The store is taken for one with an air gap inside, or its vessel was taken off waterlogged and not replaced.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Speicher wird für einen mit innerem Luftraum gehalten, oder sein Ausdehnungsgefäß wurde voll Wasser abgenommen und nicht ersetzt.</translation>
</message>
<message>
<source>A service valve is put before the store's vessel so that it can be changed without draining the store.</source>
<extracomment>lessons/slips</extracomment>
<translation>Vor das Ausdehnungsgefäß des Speichers wird ein Wartungsventil gesetzt, damit es getauscht werden kann, ohne den Speicher zu entleeren.</translation>
</message>
<message>
<source>The vessel is left as it came from the works, charged to less than the reducing valve lets through.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Ausdehnungsgefäß bleibt, wie es vom Werk kam, mit weniger Vordruck, als der Druckminderer durchlässt.</translation>
</message>
<message>
<source>A vessel made for a much smaller store is taken from stock.</source>
<extracomment>lessons/slips</extracomment>
<translation>Aus dem Lager wird ein Ausdehnungsgefäß für einen viel kleineren Speicher genommen.</translation>
</message>
<message>
<source>The new store came without its valve, the old one no longer fitted, and nobody came back.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der neue Speicher kam ohne sein Ventil, das alte passte nicht mehr, und niemand kam noch einmal.</translation>
</message>
<message>
<source>The discharge is run in one piece to the outside wall, as the one of the heating's safety valve is.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Abblaseleitung wird in einem Stück zur Außenwand geführt, wie die des Sicherheitsventils der Heizung.</translation>
</message>
<message>
<source>The tundish is boxed in behind the bath panel, where it looks tidier.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Ablauftrichter wird hinter der Wannenverkleidung versteckt, weil es ordentlicher aussieht.</translation>
</message>
<message>
<source>The tundish is put where there is a floor drain, and the valve stays on top of the store.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Ablauftrichter sitzt, wo ein Bodenablauf ist, und das Ventil bleibt oben auf dem Speicher.</translation>
</message>
<message>
<source>A room heater with a back boiler is to heat the water too, and its pipes are led through the store's coil.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Kaminofen mit Wassertasche soll auch das Wasser erwärmen, und seine Rohre werden durch die Heizschlange des Speichers geführt.</translation>
</message>
<message>
<source>A room heater with a back boiler is joined to the sealed heating, because its pipes were there already.</source>
<extracomment>lessons/slips</extracomment>
<translation>Ein Kaminofen mit Wassertasche wird an die geschlossene Heizung angeschlossen, weil deren Rohre schon da waren.</translation>
</message>
<message>
<source>The vent is joined by the heat source and the feed where the pipe comes past the airing cupboard.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Entlüftung wird beim Wärmeerzeuger angeschlossen und die Speisung dort, wo das Rohr am Wäscheschrank vorbeikommt.</translation>
</message>
<message>
<source>Two cisterns stand side by side in the loft, and the vent is hooked over the nearer one.</source>
<extracomment>lessons/slips</extracomment>
<translation>Auf dem Dachboden stehen zwei Behälter nebeneinander, und die Entlüftung wird über den näheren gehängt.</translation>
</message>
<message>
<source>The vent is taken down under a beam and up again, and a drain is put at its lowest point.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Entlüftung wird unter einem Balken hindurch hinab und wieder hinauf geführt, und an ihrem Tiefpunkt wird eine Entleerung gesetzt.</translation>
</message>
<message>
<source>The cistern in the loft leaks, and the main is joined straight to the store: the shower is so much better.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Behälter auf dem Dachboden leckt, und der Hausanschluss wird geradewegs mit dem Speicher verbunden: Die Dusche ist so viel besser.</translation>
</message>
<message>
<source>The heat source is taken for one with a vessel inside, or the old one was taken off its bracket and never replaced.</source>
<extracomment>lessons/slips</extracomment>
<translation>Der Wärmeerzeuger wird für einen mit eingebautem Ausdehnungsgefäß gehalten, oder das alte wurde von seiner Halterung genommen und nie ersetzt.</translation>
</message>
<message>
<source>A service valve is put by the expansion vessel so that it can be changed without draining down, or one at the heat source between the two, and nobody locks it open.</source>
<extracomment>lessons/slips</extracomment>
<translation>Beim Ausdehnungsgefäß wird ein Wartungsventil gesetzt, damit es ohne Entleeren getauscht werden kann, oder am Wärmeerzeuger eines zwischen beiden, und niemand sichert es in offener Stellung.</translation>
</message>
<message>
<source>The pump is put into the return, where there is room for it, and so before the vessel's tee and not after it: nobody asks what it then takes off the rest.</source>
<extracomment>lessons/slips</extracomment>
<translation>Die Pumpe sitzt im Rücklauf, wo Platz für sie ist, und damit vor dem T-Stück des Ausdehnungsgefäßes statt dahinter: Niemand fragt, was sie dem Rest dann an Druck nimmt.</translation>
</message>
<message>
<source>The vessel is fitted as it comes out of its box, or pumped up while the circuit is under pressure, and nobody sets its charge.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Ausdehnungsgefäß wird eingebaut, wie es aus der Schachtel kommt, oder bei Druck im Kreis aufgepumpt, und niemand stellt seinen Vordruck ein.</translation>
</message>
<message>
<source>The vessel that came with the smaller heat source was kept when two rooms were added.</source>
<extracomment>lessons/slips</extracomment>
<translation>Das Ausdehnungsgefäß des kleineren Wärmeerzeugers wurde behalten, als zwei Räume hinzukamen.</translation>
</message>
<message>
<source>Cottage safety valve plugged</source>
<extracomment>samples</extracomment>
<translation>Landhaus, Sicherheitsventil verschlossen</translation>
</message>
<message>
<source>Cottage</source>
<extracomment>samples</extracomment>
<translation>Landhaus</translation>
</message>
<message>
<source>Flat over workshop pump no way round</source>
<extracomment>samples</extracomment>
<translation>Wohnung über der Werkstatt, Pumpe ohne Umweg</translation>
</message>
<message>
<source>Flat over workshop</source>
<extracomment>samples</extracomment>
<translation>Wohnung über der Werkstatt</translation>
</message>
<message>
<source>Guest house second source cut off</source>
<extracomment>samples</extracomment>
<translation>Gästehaus, zweiter Wärmeerzeuger absperrbar</translation>
</message>
<message>
<source>Guest house</source>
<extracomment>samples</extracomment>
<translation>Gästehaus</translation>
</message>
<message>
<source>Terrace as found valve in vent</source>
<extracomment>samples</extracomment>
<translation>Reihenhaus wie vorgefunden, Ventil in der Entlüftung</translation>
</message>
<message>
<source>Terrace as found</source>
<extracomment>samples</extracomment>
<translation>Reihenhaus wie vorgefunden</translation>
</message>
<message>
<source>Terrace as proposed</source>
<extracomment>samples</extracomment>
<translation>Reihenhaus wie vorgeschlagen</translation>
</message>
<message>
<source>Terrace bypass backwards</source>
<extracomment>samples</extracomment>
<translation>Reihenhaus, Überströmventil verkehrt herum</translation>
</message>
<message>
<source>Terrace discharge too long</source>
<extracomment>samples</extracomment>
<translation>Reihenhaus, Abblaseleitung zu lang</translation>
</message>
<message>
<source>Terrace valve before vessel</source>
<extracomment>samples</extracomment>
<translation>Reihenhaus, Ventil vor dem Ausdehnungsgefäß</translation>
</message>
<message>
<source>Village hall near miss</source>
<extracomment>samples</extracomment>
<translation>Gemeindehaus, Beinahe-Anschluss</translation>
</message>
<message>
<source>Village hall</source>
<extracomment>samples</extracomment>
<translation>Gemeindehaus</translation>
</message>
</context>
</TS>
