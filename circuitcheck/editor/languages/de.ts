<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
<name>circuitcheck</name>
<message>
<source>Apache License 2.0. The font Source Sans 3 is under the SIL Open Font License 1.1. The window is made with Qt, under the GNU Lesser General Public License 3.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Draws a heating and hot-water circuit, and proves it safe or shows the valve that makes it unsafe.

{care}

{licences}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align &amp;left</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Left edges in one line</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align in a &amp;column</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>One above the other, so that ports lie in one line</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align &amp;right</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Right edges in one line</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align &amp;top</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Upper edges in one line</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align in a ro&amp;w</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Side by side, so that ports lie in one line</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align &amp;bottom</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Lower edges in one line</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;New</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Begin an empty drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Open…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open a drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Save</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save the drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save &amp;as…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save the drawing under another name</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>New &amp;window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A window beside this one, with a drawing of its own</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Close the window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Close this window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Quit</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Close every window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Undo</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take the last step back</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Redo</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Make the step again</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Delete</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Delete what is selected; pipes heal</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Select &amp;all</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Select everything</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Cu&amp;t</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take what is selected out, to paste it elsewhere</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Copy</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Copy what is selected, for a drawing or as a picture</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Paste</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Put in what was copied, where the pointer or the caret is</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>D&amp;uplicate</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What is selected once more, a little aside</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Re&amp;name…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The label of what is selected, in the details</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Find in the drawing…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A part or pipe by its label, kind or id</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find the ne&amp;xt</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The next of what was found last</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find the one &amp;before</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Back among what was found last</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Search the co&amp;mmands…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Any command by its name</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Zoom &amp;in</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Larger</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Zoom &amp;out</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Smaller</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>One square is 16 px</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Fit the drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The whole drawing in the window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Next finding</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose the next finding</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Previous finding</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose the finding before</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Leave the finding</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing as it was (Escape)</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Place a part…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find a part by typing and place it; letters do the same</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find on the &amp;shelf</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find a part among the parts to the left</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Place a&amp;gain</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>One more of the kind placed last</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Keep placing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>After each part the next of its kind is in hand</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Draw a pipe from here</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From the part that is selected or the caret, by keys</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Let the program route it</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Corners that were set by hand go</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Spread a&amp;cross</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Alike gaps from left to right</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Spread d&amp;own</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Alike gaps from top to bottom</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Turn</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Turn what is selected by a quarter, clockwise</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Mirror</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Mirror what is selected, left to right</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;About circuitcheck</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Version, licence and words of care</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Report of a failure…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What the program has noted of its own failures, to hand on by hand</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;File</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Edit</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;View</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Arrange</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Help</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Undo {step}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Redo {step}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Align and spread</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The colours of the window and the sheet</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Appearance</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Language</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The language of the window, from the next start on</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The checks failed inside the program and have judged nothing: {error}.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>it failed inside the program</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Untitled drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing drawn</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Judging…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing judged</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing found</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>There is nothing on the clipboard that can be put into a drawing.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What is on the clipboard is too large for a drawing. Nothing was put in.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What is on the clipboard cannot be read as parts of a drawing.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 more thing is wrong with it.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} more things are wrong with it.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing was put in.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing on the clipboard is empty. Nothing was put in.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Search the commands</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No command is called that.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Place {part}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} was changed by somebody else since it was opened here.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 part</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} parts</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 pipe</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} pipes</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Copied: {parts} and {pipes}.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Cut</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing was pasted.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>With this the drawing would have more parts than a file can hold.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Cut a part &amp;in…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find a part by typing and put it into this pipe</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The program sends nothing to anybody. If you want to help to mend it, hand on this report yourself. It holds just what stands here, and not the drawing. Names of your files or parts can be in it: take out what is nobody’s business.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Copy the report</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Save the report…</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The report is on the clipboard. Paste it before you close the program.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save the report</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Text (*{ending})</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The report is saved as {name}.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing was unsaved, so nothing is lost.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing that was not saved is kept. It is offered to you when the program starts again.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The {count} drawings that were not saved are kept. They are offered to you when the program starts again.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Something went wrong, and the program has to close.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Close the &amp;program</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Below is the end of what it has noted on this machine.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing has gone wrong that the program knows of.</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What the program has noted of its own failures</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>C&amp;lose</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The report</source>
<extracomment>window/failing</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How it is worked</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Holds</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Source</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Copy</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Copy this figure with its working as text (Ctrl+C)</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Copy: {title}</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fold this figure (Escape)</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fold this figure</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The whole drawing</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show it on the sheet</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Not kept to</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What puts it right</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Missing</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Change it where it lives</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open that figure</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Rests on usual values</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show {count} more</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No figure applies to this drawing.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No figure is called so.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The figures failed inside the program; none is shown.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Working out the figures…</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Working out the figures anew: these are of the drawing before the last step.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>working out…</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Of the drawing before the last step:</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find a figure</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Figures</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>given in the drawing</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>usual value, not given</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>measured on the sheet</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>counted on the sheet</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} more</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>and {count} more</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Not worked: 1 number is missing.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Not worked: {count} numbers are missing.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Not worked: {why}.</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>from the figure</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>rule book {book}, {name}</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{worked} worked, {refused} not</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{worked} worked</source>
<extracomment>window/figures</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open &amp;recent</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open a sa&amp;mple</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No samples are installed</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No files yet</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Clear the list</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Drawings (*{ending})</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>All files (*)</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>this drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save the changes to {name}?</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Without saving they are lost.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} exists already. Replace it?</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Replacing it discards what was changed there. Saving under another name keeps both.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Replace</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save as…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be opened.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>cannot be saved.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing here is as it was. Save it elsewhere, or try again.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>cannot be read.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} things are wrong with it. The first: {first}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>filled in</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A verdict rests on the usual value</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>a free end</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pipe {id}, {start} to {finish}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>not known</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>not known, kept</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>usual</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>more than {above}, at most {most}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>more than {above}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>from {least} to {most}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>at least {least}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>at most {most}{unit}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>figure: {names}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>figures: {names}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A number in {unit}.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>It must be {limits}.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A verdict rests on this usual value.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No check or figure waits for it now.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The checks are still judging.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Needed by: {these}.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{title} (would be {grade}, not judged without it)</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{title} (would be {grade})</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{label}: “{said}” is neither yes nor no.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{label}: “{said}” cannot be set. It is one of {options}.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Part or pipe</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Value</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Needed by</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Every number is known.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No check and no figure waits for a number.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No verdict rests on a usual value.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing is drawn.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Enter answers and goes on, Shift+Enter goes back, ? says not known, Ctrl+V pastes a column or a table.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find in what is to be filled in</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What to show</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Put in order</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take away what is filled in and ask for the most needed first (F5)</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What the row is, and what needs it</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Why it was refused</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing found.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Not known</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Usual: {usual}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show in the details</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Paste</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Paste one column of values; rows copied from this table, or with its headings “key” and “value”; or a table with a row for each part or pipe and the fields’ names above it. {nothing}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>There is no text to paste.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fill in 1 value</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fill in {count} values</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{values} values do not fit into 1 row.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing drawn has the key “{name}”.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>“{name}” is no field that can be filled in.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>pipe {id}</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing drawn is called “{name}”.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Several things are called “{name}”: name them by their ids.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>“{name}” has no field “{field}”.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{label} is told in {own}, and not in {unit}.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{label} has no unit, and is not told in {unit}.</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What is not known, and what needs it</source>
<extracomment>window/fill_in</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{name}: what was found</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find in the drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing here is called that.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{index} of {count} called “{typed}”.  F3 next, Shift F3 back.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Flows on the sheet</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Situation</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What stands by the pipes</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fill in</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fill in what is not known</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Hide the flows</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Hide the flows (F9)</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Flows</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fill in: {sentence}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>PDF document</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>HTML page</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>SVG drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>PNG picture</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Table</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>PDF, the whole document to print and file</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>HTML, the whole document as one page for a browser or a phone</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>SVG, the drawing as line work</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>PNG, the drawing as a picture</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>CSV, findings and parts list for a spreadsheet</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Text upright, the drawing as it is larger</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>All pages upright</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>All pages lying</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Unanswered, not judged and what does not apply are told in it. A drawing without findings is not a certificate.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Hand over</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Kind of file</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Paper</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pages</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Kind of file</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Paper</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pa&amp;ges</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Save…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The document could not be made: it failed inside the program.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save the whole as a document: PDF, HTML, SVG, PNG or a table</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Hand over…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Print the drawing…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing on paper</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Making {file}…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Printing…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>not saved yet</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Printed.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The printer did not take the page.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} is written.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Search the lessons</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Lessons</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>More checks: their text alone</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} of {all} lessons read</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{title}, read</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Lessons…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Each danger and fault on a small drawing to operate</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Lessons – circuitcheck</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Show what happens</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Try the remedy</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Back to the fault</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Previous</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Next</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Set the situation and the valves in which it is seen, and let time run</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The same with the fault put right</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing with the fault again, as the lesson began</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The lesson before (Alt+Left)</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The lesson after (Alt+Right)</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Its drawing is being made …</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Remedied: {what}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Remedy and consequence are being worked out …</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Its drawing could not be made; this is its text.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>With the fault: {what}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What happens is being worked out …</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The lesson’s sentences</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>In this drawing</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What it is</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How such a slip happens</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What comes of it here</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The remedy here</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Why it matters</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Learn</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What is written of it</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Something is &amp;missing…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Say that something is nowhere in the drawing</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Your marks</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Take back</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Show the answer</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Give up</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What is &amp;wrong here?</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{title}. Seed {seed}.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose what is wrong</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Press a part, a pipe or a control in the drawing. Of the drawing as a whole is written:</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Say below what the drawing lacks.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{number}  {place}: {reason}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>None yet. A false accusation costs half a point.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Progress by check</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fault</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Met</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Found</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Near</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>False</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What was put in, the least surely known first</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How often it was put in</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Right part and right reason</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Right part, another reason</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Said where it was not so</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Back</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Export as &amp;CSV…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Export as &amp;JSON…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Progress</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} exercise answered.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} exercises answered.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Kept on this machine only, in {path}.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Export the progress</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{name} was not written: {reason}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Type to search the reasons</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Search the reasons</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What can be wrong</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No reason says that.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The faults and what came of them</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Explanation</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Next exercise</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The same &amp;again</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Choose…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{outcome}: {reason}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accused wrongly: {place}, {reason}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>You said</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What the checks say</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How it happens</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{place} is sound in this.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>When one would say so</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;All</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>N&amp;one</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Least &amp;known</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The kinds you have found least surely so far</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How many faults</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Arrangement</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Any</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Surprise me</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Seed: the same number makes the same exercise; empty: surprise me</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Begin</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Progress…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Practice</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Faults are put into a sound drawing like this one. Find them, and say what is wrong.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Kinds of fault</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Faults</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Ar&amp;rangement</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Seed</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Making it…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} of {all} kinds chosen.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Practice sheet</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing to be judged. Tab and arrow keys go from thing to thing, Enter says that the one at hand is wrong.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>At {name}.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Practice – circuitcheck</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No drawing takes {count} faults of these kinds. Choose more kinds, or fewer faults.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>sound</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Progress is not kept: {reason}</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Circulation</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Discharge</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing itself</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Heat source and its safety</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open-vented heating</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Hot-water store</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Structure</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Cold and hot supply</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>found</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>other reason</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>missed</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Something is missing</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find the fault</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find the {count} faults</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{points} of {count} point</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{points} of {count} points</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} found</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} for another reason</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} missed</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} accused wrongly</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{all}.</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find faults that were put into sound drawings</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Practice…</source>
<extracomment>window/learning</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Working out the flows…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The flows failed inside the program; none is shown.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fi&amp;gures</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Every figure worked out of the drawing, with its working</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show the &amp;flows</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Which way water flows in each situation, and how fast</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Next situation</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Flows in the next situation</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>F&amp;lows on the sheet</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>By the pipes: {what}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 number is missing: some flows are not known.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} numbers are missing: some flows are not known.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 number is missing to work out the flows.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} numbers are missing to work out the flows.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 figure has no room: choose a pipe to read it.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} figures have no room: choose a pipe to read it.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{name} is open in another window already.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{name} is open already: the program runs twice.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Opened twice it can be changed in both. Whoever saves second is asked first: nothing that was saved is replaced unasked.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open it here too</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Go to that window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Arrows only</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Flow, l/min</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Velocity, m/s</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pressure loss</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pressure, bar</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Temperature, °C</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Operating</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Arrows move</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Let the arrows move along the pipes, or stand still</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Leave operating</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Leave operating (Escape)</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Your own</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>lifts</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>cut out</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The course failed inside the program; none is shown.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing can be worked out in time: {why}.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The chart needs one more number: {names}.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The chart needs {count} more numbers: {names}.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>safety valve {bar}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>plugged safety valve {bar}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>vessel’s charge {bar}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Each pipe and each part holds water of one temperature, which the solved flow carries on; pipes and stores lose no heat, and nothing circulates by warmth alone. Rooms stay as warm as they are set.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A heat source burns at its output until its flow is near the design’s, and heats by way of its own metal (0.5 kJ/K for each kW, 40 K above the water); its overheat cut-out, where one is stated, trips at 95 °C (common practice, no source). Controls do not turn anything by themselves; a pump’s run-on ends.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Vessels: Boyle’s law, the gas staying as cool as it was; the tube’s growth by warmth counts only where nothing else gives way. A safety valve holds its set pressure once it lifts: it needs up to a tenth more for its full lift, and reseats up to a fifth lower (EN ISO 4126-1, from memory). Pressures are the vessel’s, and at gauges and pipes also by height and pump.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The design states {litres} l more water than the parts and pipes drawn hold: it stands with the emitters.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>no gas</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{how}.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>cut off from</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the expansion vessel</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the safety valve</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the open vent</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the cold feed</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the relief valve</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>and {device}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Operate</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing at work: turn its valves, see its water flow and warm</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Click a valve to turn it; Tab and Space do the same. The drawing is not changed. Escape leaves.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Play</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Let the time run (Space on the chart)</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Begin anew</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From the beginning: cold where heat is called, else hot</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How fast the time runs</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{times} × time</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Heat source whose water the chart shows</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What this leaves out</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pressure and temperature in time</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pause</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>pressure</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>flow</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>return</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Let out so far: {litres} l</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>at {time}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>flow {celsius}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>return {celsius}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The safety valve lifts</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The overheat cut-out trips</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The run-on is over: the pump stops</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The store is as warm as its thermostat is set</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The pressure passes what the heat source is made for</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The pressure is gone: the top can draw in air</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Hotter than the formulas reach: it is about to boil</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Past 100 bar: something has burst long before</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{time} {what}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Sheet in operation</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing at work. Tab and arrow keys go from valve to valve, Space turns the one at hand, Escape leaves. The drawing itself is not changed here.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Situations</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Valves and drives</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>as the valves were turned</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Heating only</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Hot water only</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Heating and hot water</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pump run-on</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>At rest</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Power off</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>As drawn</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{valve} to {leg}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{part}: its valves</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>shut</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>open</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>with gas</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>heats</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>off</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{part}: its pump</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>runs</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>stands</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{valves} shut</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>all motor valves open</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the pump of {part}</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{pump} runs</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>no pump runs</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>heat on</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>heat off</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>its expansion vessel</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>its safety valve</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>its open vent</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>its cold feed</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>its relief valve</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{part} is cut off from {devices}.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source> and </source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} number is missing to work out the flows.</source>
<extracomment>window/operating</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{label}: why it was refused</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Details</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{value} (usual)</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>none (usual)</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>none, for certain</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>none drawn yet</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open the lesson</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>This fault on a small drawing to operate, and its remedy</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accept this finding…</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>With a reason, a name and until when</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>until {day}</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accepted</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>no name</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take the acceptance back</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Do it</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Do it: {cure}</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Make this edit; Undo takes it back</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Leave this finding</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Leave this finding (Escape)</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Proved by shutting</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Operate this</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>See the drawing at work with these valves shut (F7)</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{finding} (accepted)</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>, accepted</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Findings</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 check</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} checks</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{speaking} of {checks}</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing was changed.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>It stays at the usual {value}.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>It stays not known.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>It stays at {value}.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>“{text}” is not a number.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Parts, pipes and controls of the drawing</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Name</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>free end</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pipe</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{title}: fold or unfold</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Parts</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find a part</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Label</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Title</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Set</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Acts on</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>In one room with</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Drawing</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} selected</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From {start} to {finish}.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>These have no field in common.</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Rename {name}</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Set title</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Set scale</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Not judged</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Usual values taken</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Does not apply</source>
<extracomment>window/panels</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Parts list</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How much</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Size</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Parts and pipe, counted</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What the sums rest on</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Save as CSV…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Section</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Ids</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} could not be saved: {reason}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>1 bend</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} bends</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source> not known</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Save the parts list</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Tables (*.csv)</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A drawing was not saved when the program ended.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} drawings were not saved when the program ended.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open it</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open them</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Throw it away</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Throw them away</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Ask me later</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A drawing without a title</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>of {path}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>never saved to a file</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{name}, {where}, as of {when}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Another window of the program has opened this drawing already.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing that was left cannot be read.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What was left could not be thrown away.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>It stays in {file}. {message}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>This is a danger. Accepted it stays in every list and still counts: accepting says that somebody has seen it and why it stands, not that it is safe.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No finding of this drawing is accepted. A finding's card has a button for it.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Run out: the finding counts again</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing like it is found any more</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accept a finding</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Why it may stand</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Only until</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Last day on which it holds</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Reason</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accept the finding</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accepted findings</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>On: </source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No reason given</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take it back</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take it back: {name}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show {name} on the sheet</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>, until {until}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose an earlier file, and what was removed, fitted, moved and changed since is drawn on the sheet and listed here, with what to strip out and what to fit.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The two drawings hold the same.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Compare with a file…</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose an earlier drawing</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Stop comparing</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What differs</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From {name} to the drawing as it stands.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Removed</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fitted</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Re-piped</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Changed</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Moved on the sheet</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Called by another id</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{mine} is now {its}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Said of the drawing</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Strip out</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Fit</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pipe cut shorter or made longer</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Being judged…</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Findings that went</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Findings that came</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Findings that weigh otherwise</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{before}, now {now}: {message}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{metres} m of {item} {size}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>not known: {what}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Compare with an earlier drawing</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be read as a drawing.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{file} cannot be read.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the drawing as it was reviewed</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No note is pinned to this drawing.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Notes</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Write a note</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pin the note</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pin it to what is selected on the sheet</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{names} and {count} more</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>On: the whole drawing. Select parts to pin it to them.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>On: {names}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Note by {author}, {state}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Answer</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Settled</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Answer the note: {text}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Settle</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open again</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take out</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take out: {text}</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>On the whole drawing</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Your name, for what you say and sign</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Your name</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Review</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Notes</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Accepted</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Compare</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Record</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>accepted with remarks</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>returned for changes</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>✓ Holds</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>✕ Broken</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>? Incomplete</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No review record has been made of this drawing.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Review record</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Your role, such as supervisor</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Your role</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Decision</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Remarks</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Make the review record</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A record of the drawing as it stands now</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Make a record</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What it covers</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What it cannot prove</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The records failed to be held against the drawing inside the program.</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Show what changed</source>
<extracomment>window/review</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The review record is broken by this change: Review, Record says why.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>review record</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Review panel</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Notes, comparing, acceptances and the review record</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pin a &amp;note…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A note on what is selected</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Compare with a file…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What differs from an earlier drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Stop comparing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Leave the earlier drawing</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Accept the finding…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accept the finding that is open</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Review &amp;record…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Whether it holds, and to make one</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Review</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Give your name first: what is said and signed bears it.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pin note on {name}</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pin note</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Answer note</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Settle note</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open note again</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take out note</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Accept finding</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take acceptance back</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Make review record</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Nothing is selected.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A pipe goes where its ends go: drag one of its runs, or move what it joins.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Move</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Turn</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Mirror</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Remove</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Align</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Spread</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Route</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Duplicate</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Type a part’s name to place it.  Press on a port and drag to draw a pipe.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{count} chosen.  R turns them, M mirrors them, arrow keys move them; Ctrl C copies them.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Pipe chosen.  Drag a run to shape it, Delete takes it out.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{title} chosen.  R turns it, M mirrors it, arrow keys move it by one square.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Turn round</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Shape pipe</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Drawing without a name</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Enter places it here, Shift Enter one more after it; Tab takes it in hand to turn or move it.  Up and down choose another, Escape leaves.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Find a part to place</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>No part is called that or does that.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Release on a port, on a pipe to make a tee, or in the open. Escape leaves the drawing as it is.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Draw pipe</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Join pipe</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Cut in</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Place</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Click to place the {part}, on a pipe to cut it in.  R turns it, M mirrors it, Shift places one more, Escape puts it away.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Place the heat source first</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Press Enter, type the name of any part, or drag it from the parts</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Place heat source</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Start from an arrangement</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take the tour</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A pipe begins at a port that has none: choose a part, or put the caret on a port.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From {start}.  Tab goes from port to port, P begins at the next one, Enter ends the pipe, Escape leaves it.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>the free end</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>port {port}</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{verb} {what}</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>pipe</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Sheet</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The drawing. Letters find a part to place. Tab walks through the parts, Ctrl and an arrow goes to the next one that way, arrow keys move what is chosen, P begins a pipe and Tab takes it from port to port, Enter places or ends.</source>
<extracomment>window/sheet</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>From nothing</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Empty sheet</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Begin with the heat source, and draw from port to port.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Begin empty</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{group}, sound</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Start from this</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Samples to look at</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Opened as a copy. Nothing you do changes the sample.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open a copy</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Begin a drawing</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Picture of the drawing</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What to begin with</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>What would you like to draw?</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Arrows choose, Enter begins. Escape shows the empty sheet.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open a drawing…</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>One fault and its cure, in two minutes</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Open {name}</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>New from an &amp;arrangement…</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Begin with a sound arrangement, a sample or an empty sheet</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Tour: one fault and its cure</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Two minutes on a drawing of its own</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>A drawing with one fault</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Someone fitted a valve between the heat source and its expansion vessel. The program judged the drawing as it was opened; the bar counts what it found, the heaviest first.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Next</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose the finding</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Click it in the list, or press the button below. By keys: F8.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Choose it</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The proof stands on the drawing</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>With the valves that are shown shut, what is tinted is cut off from the vessel. Water that is heated there has nowhere to swell. Every position the valves can take was tried.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Why, and what puts it right</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The card says why it matters, what puts it right, and from which source. Each cure it offers was tried first on the whole drawing. Press one, or the button below.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Take the first cure</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Sound again, in one step</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Undo would bring the fault back. The list below now says what was judged, what was not, and which usual values were taken: silence is never approval.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Where to go on</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Operate shows the water flow and lets you shut any valve. Figures shows each size with its working. Hand over writes the document that another person can check. This drawing is a copy: change what you like.</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Done</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Leave the tour</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Step {at} of {of}</source>
<extracomment>window/start</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Zoom out</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Zoom</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Zoom in</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Zoom {factor:.0f} percent; press for 100</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Fill in what is not known</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>One table of what is not known, the most needed first</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Parts and &amp;pipe, counted…</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>How many of each part, and pipe by size, to copy or save as a table</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>(name of the language of this translation)</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Parts &amp;list</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Every part and pipe by its name</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>put it right</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>unsaved changes</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>{name}[*] – circuitcheck</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Finding {index} of {count}.  F8 next, Shift F8 back, Escape leaves it.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>The window speaks that language from the next start on.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>Unsaved work is not kept safe: {reason}.</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
<message>
<source>&amp;Window</source>
<extracomment>window</extracomment>
<translation type="unfinished" />
</message>
</context>
</TS>
