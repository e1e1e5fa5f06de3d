<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>ActCard</name>
    <message>
        <source>Also: %1</source>
        <extracomment>what else is due at a stop; a list follows</extracomment>
        <translation>Aussi&#xa0;: %1</translation>
    </message>
    <message>
        <source>Touch to hear why.</source>
        <translation>Touchez pour savoir pourquoi.</translation>
    </message>
</context>
<context>
    <name>Amount</name>
    <message>
        <source>%1 moth</source>
        <translation>%1 papillon</translation>
    </message>
    <message numerus="yes">
        <source>%1 moths</source>
        <translation>
            <numerusform>%1 papillon</numerusform>
            <numerusform>%1 papillons</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 bee</source>
        <translation>%1 abeille</translation>
    </message>
    <message numerus="yes">
        <source>%1 bees</source>
        <translation>
            <numerusform>%1 abeille</numerusform>
            <numerusform>%1 abeilles</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 night</source>
        <translation>%1 nuit</translation>
    </message>
    <message numerus="yes">
        <source>%1 nights</source>
        <translation>
            <numerusform>%1 nuit</numerusform>
            <numerusform>%1 nuits</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 jour</translation>
    </message>
    <message numerus="yes">
        <source>%1 days</source>
        <translation>
            <numerusform>%1 jour</numerusform>
            <numerusform>%1 jours</numerusform>
        </translation>
    </message>
    <message>
        <source>under %1 a night</source>
        <extracomment>of a rate: less than a tenth of a moth a night</extracomment>
        <translation>moins de %1 par nuit</translation>
    </message>
    <message>
        <source>%1 a night</source>
        <translation>%1 par nuit</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>%1 jusqu’ici</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 cm clear</source>
        <translation>%1 cm au-dessus du couvert</translation>
    </message>
    <message>
        <source>level with the canopy</source>
        <translation>au niveau du couvert</translation>
    </message>
    <message>
        <source>%1 cm below the canopy</source>
        <translation>%1 cm sous le haut du couvert</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>à %1 près</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <extracomment>a day of this year; see QLocale::toString for the letters</extracomment>
        <translation>dddd d MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <translation>dddd d MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>%1 larva</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 larvae</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Animal</name>
    <message>
        <source>moth</source>
        <translation>papillon</translation>
    </message>
    <message>
        <source>moths</source>
        <translation>papillons</translation>
    </message>
</context>
<context>
    <name>AroundPage</name>
    <message>
        <source>In from the field edge, by paces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>To the nearest farmyard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the nearest strong light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest trap of this season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not quite as the protocol asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can set the trap up here all the same.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BandDots</name>
    <message>
        <source>%1, band %2 of %3</source>
        <translation>%1, classe %2 sur %3</translation>
    </message>
</context>
<context>
    <name>BinRow</name>
    <message>
        <source>Pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is being counted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Bulletin</name>
    <message>
        <source>%1 of %2 traps were counted this week.</source>
        <translation>%1 pièges sur %2 ont été relevés cette semaine.</translation>
    </message>
    <message>
        <source>None of those counted in full had caught any %1.</source>
        <translation>Aucun de ceux qui ont été relevés en entier n’avait pris de %1.</translation>
    </message>
    <message>
        <source>The median trap caught none; some caught %1.</source>
        <translation>Le piège médian n’a rien pris ; certains ont pris des %1.</translation>
    </message>
    <message>
        <source>The median trap caught about %1 in seven nights: half caught more, half fewer.</source>
        <translation>Le piège médian a pris environ %1 en sept nuits : la moitié en a pris plus, l’autre moins.</translation>
    </message>
    <message>
        <source>So far this season the median trap has caught about %1.</source>
        <translation>Depuis le début de la saison, le piège médian a pris environ %1.</translation>
    </message>
    <message>
        <source>Nobody has published bands for this trap.</source>
        <translation>Personne n’a publié de classes pour ce piège.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>a name of a band; a number of traps</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 none</source>
        <extracomment>a name of a band that no trap has reached</extracomment>
        <translation>%1 aucun</translation>
    </message>
    <message>
        <source>Traps by the band reached so far: %1.</source>
        <translation>Pièges selon la classe atteinte jusqu’ici : %1.</translation>
    </message>
    <message>
        <source>Bands are for whole seasons: a trap can still move up, never down.</source>
        <translation>Les classes valent pour une saison entière : un piège peut encore monter, jamais descendre.</translation>
    </message>
    <message>
        <source>In no district do enough farms report to give figures of its own.</source>
        <translation>Dans aucun district, assez de fermes n’ont de relevés pour donner des chiffres à part.</translation>
    </message>
    <message>
        <source>Of the districts with figures, %1 has the highest median so far, about %2.</source>
        <translation>Parmi les districts avec chiffres, %1 a la médiane la plus élevée jusqu’ici, environ %2.</translation>
    </message>
    <message>
        <source>The highest band that any trap has reached is “%1”, in %2.</source>
        <translation>La classe la plus haute atteinte par un piège est « %1 », dans %2.</translation>
    </message>
    <message>
        <source>Most traps have caught no %1 yet.</source>
        <translation>La plupart des pièges n’ont pas encore pris de %1.</translation>
    </message>
    <message>
        <source>The flight is rising: in most traps the last count is the highest so far.</source>
        <translation>Le vol est en hausse : dans la plupart des pièges, le dernier relevé est le plus élevé jusqu’ici.</translation>
    </message>
    <message>
        <source>The flight is near its highest in most traps.</source>
        <translation>Le vol est près de son maximum dans la plupart des pièges.</translation>
    </message>
    <message>
        <source>The flight is past its highest in most traps.</source>
        <translation>Le vol a passé son maximum dans la plupart des pièges.</translation>
    </message>
    <message>
        <source>How far the flight is cannot be told from the counts so far.</source>
        <translation>Les relevés jusqu’ici ne disent pas où en est le vol.</translation>
    </message>
    <message>
        <source>Keep counting every trap on the day of count; a zero is a count as well.</source>
        <translation>Continuez à relever chaque piège le jour du relevé ; un zéro est aussi un relevé.</translation>
    </message>
    <message>
        <source>Fields near traps in the higher bands are the first to be looked at, and fields without a trap are looked at all the same.</source>
        <translation>Les champs proches des pièges des classes hautes sont à examiner en premier, et les champs sans piège le sont tout autant.</translation>
    </message>
    <message>
        <source>Only larvae counted in a field tell of that field. What labels, local rules and a licensed adviser say comes before anything here.</source>
        <translation>Seules les larves comptées dans un champ renseignent sur ce champ. Ce que disent les étiquettes, la réglementation locale et un conseiller agréé passe avant tout ce qui est écrit ici.</translation>
    </message>
    <message>
        <source>%1 of %2 traps counted; the median trap caught about %3 this week and about %4 so far.</source>
        <translation>%1 pièges sur %2 relevés ; le piège médian a pris environ %3 cette semaine et environ %4 jusqu’ici.</translation>
    </message>
    <message>
        <source>What to do now</source>
        <translation>Que faire maintenant</translation>
    </message>
    <message>
        <source>Fewer than 5 farms reported this week; no figures are given.</source>
        <translation>Moins de 5 fermes ont transmis des relevés cette semaine ; aucun chiffre n’est donné.</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>fewer than 5 farms report</source>
        <translation>moins de 5 fermes ont des relevés</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>N</source>
        <extracomment>north, south, east and west, one letter each
----------
one letter for north on a map</extracomment>
        <translation>N</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>District by district</source>
        <translation>District par district</translation>
    </message>
    <message>
        <source>District</source>
        <translation>District</translation>
    </message>
    <message>
        <source>Traps counted</source>
        <translation>Pièges relevés</translation>
    </message>
    <message>
        <source>This week, median</source>
        <translation>Cette semaine, médiane</translation>
    </message>
    <message>
        <source>Season so far, median</source>
        <translation>Saison jusqu’ici, médiane</translation>
    </message>
    <message>
        <source>Band of the median</source>
        <translation>Classe de la médiane</translation>
    </message>
    <message>
        <source>Highest band</source>
        <translation>Classe la plus haute</translation>
    </message>
    <message>
        <source>Flight</source>
        <translation>Vol</translation>
    </message>
    <message>
        <source>Whole region</source>
        <translation>Toute la région</translation>
    </message>
    <message>
        <source>Cells of a tenth of a degree</source>
        <translation>Mailles d’un dixième de degré</translation>
    </message>
    <message>
        <source>Middle of the cell</source>
        <translation>Centre de la maille</translation>
    </message>
    <message>
        <source>Where the season stands</source>
        <translation>Où en est la saison</translation>
    </message>
    <message>
        <source>A map, north up. Districts and cells take the colour and the dots of the band that their median trap has reached so far: one dot for the lowest band. Districts with figures: %1 of %2; cells: %3. The table says the same.</source>
        <translation>Une carte, nord en haut. Districts et mailles portent la couleur et les points de la classe que leur piège médian a atteinte jusqu’ici : un point pour la classe la plus basse. Districts avec chiffres : %1 sur %2 ; mailles : %3. Le tableau dit la même chose.</translation>
    </message>
    <message>
        <source>No map this week: no boundaries of districts were given, and no cell has five farms that report.</source>
        <translation>Pas de carte cette semaine : aucune limite de district n’a été fournie et aucune maille ne compte cinq fermes avec des relevés.</translation>
    </message>
    <message>
        <source>cell of 0.1°</source>
        <translation>maille de 0,1°</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation>Semaine après semaine</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semaine du</translation>
    </message>
    <message>
        <source>Median trap, catch in 7 nights</source>
        <translation>Piège médian, captures en 7 nuits</translation>
    </message>
    <message>
        <source>not published</source>
        <translation>non publiée</translation>
    </message>
    <message>
        <source>Bars: what the median trap of the region caught in seven nights, for each week that was published. The table says the same.</source>
        <translation>Barres : ce que le piège médian de la région a capturé en sept nuits, pour chaque semaine publiée. Le tableau dit la même chose.</translation>
    </message>
    <message>
        <source>How fields are kept private</source>
        <translation>Comment les champs restent confidentiels</translation>
    </message>
    <message>
        <source>Figures are given for areas in which at least 5 farms report, and for no difference between such areas that would be of fewer. Places are whole districts, or fixed cells of a tenth of a degree, of which only the middle is given.</source>
        <translation>Les chiffres portent sur des zones où au moins 5 fermes ont des relevés, et aucune différence entre ces zones n’en concerne moins. Les lieux sont des districts entiers, ou des mailles fixes d’un dixième de degré dont seul le centre est donné.</translation>
    </message>
    <message>
        <source>Figures are medians and bands, made round. No single trap’s catch, no name and no place of a trap is in any file.</source>
        <translation>Les chiffres sont des médianes et des classes, arrondies. Aucun fichier ne contient la capture d’un seul piège, un nom ni l’emplacement d’un piège.</translation>
    </message>
    <message>
        <source>A published week does not move with late counts. Where those of five farms or more have changed, the week comes out again as a new issue.</source>
        <translation>Une semaine publiée ne bouge pas avec les relevés tardifs. Si ceux d’au moins cinq fermes ont changé, la semaine reparaît dans une nouvelle édition.</translation>
    </message>
    <message>
        <source>Catches of at least 5 farms told together as a median, made round. Places of traps given as a district, or as the centre of a fixed grid cell of 0.1 degree.</source>
        <translation>Captures d’au moins 5 fermes réunies en une médiane arrondie. Emplacements des pièges donnés par le district, ou par le centre d’une maille fixe de 0,1 degré.</translation>
    </message>
    <message>
        <source>Places and catches of single traps; names of people, farms and fields.</source>
        <translation>Emplacements et captures de chaque piège ; noms des personnes, des fermes et des champs.</translation>
    </message>
    <message>
        <source>The same as files</source>
        <translation>La même chose en fichiers</translation>
    </message>
    <message>
        <source>none caught yet</source>
        <translation>aucune capture encore</translation>
    </message>
    <message>
        <source>rising</source>
        <translation>en hausse</translation>
    </message>
    <message>
        <source>near its highest</source>
        <translation>près de son maximum</translation>
    </message>
    <message>
        <source>past its highest</source>
        <translation>maximum passé</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>%1 or higher</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1: week %2 of %3</source>
        <extracomment>a pest, the number of a week, a year</extracomment>
        <translation>%1 : semaine %2 de %3</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <extracomment>two days of a year</extracomment>
        <translation>%1 au %2 %3</translation>
    </message>
    <message>
        <source>Issue %1 of this week; it replaces the one before.</source>
        <translation>Édition %1 de cette semaine ; elle remplace la précédente.</translation>
    </message>
    <message>
        <source>An invented district: its people, places and numbers are made up.</source>
        <translation>District inventé : les personnes, les lieux et les chiffres sont fictifs.</translation>
    </message>
    <message>
        <source>Look for larvae in the field, with a frame.</source>
        <translation>Cherchez les larves dans le champ, avec un cadre.</translation>
    </message>
    <message>
        <source>Look for larvae in the field, with a frame, from about %1 after the highest catches.</source>
        <translation>Cherchez les larves dans le champ, avec un cadre, à partir d’environ %1 après les captures les plus fortes.</translation>
    </message>
</context>
<context>
    <name>BulletinDraft</name>
    <message>
        <source>Look for larvae in the field, with a frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for larvae in the field, with a frame, from about %1 after the highest catches.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalendarFile</name>
    <message>
        <source>Calendar file</source>
        <translation>Fichier de calendrier</translation>
    </message>
    <message>
        <source>Count days, lure and strip changes, scouting and taking down, for any calendar that reads such files.</source>
        <translation>Jours de relevé, remplacements de la phéromone et de la plaquette, dépistage et retrait des pièges, pour tout agenda qui lit de tels fichiers.</translation>
    </message>
    <message>
        <source>It rings once a week at most: the evening of the count day. Written anew and read in again, it replaces what it said before.</source>
        <translation>Il sonne au plus une fois par semaine&#xa0;: le soir du jour de relevé. Écrit et relu de nouveau, il remplace ce qu’il disait avant.</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>The file is called %1.</source>
        <translation>Le fichier s’appelle %1.</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Écrire le fichier</translation>
    </message>
</context>
<context>
    <name>CalendarWords</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 traps</source>
        <extracomment>a task and a number of traps: &quot;Count: 3 traps&quot;</extracomment>
        <translation>%1&#xa0;: %2 pièges</translation>
    </message>
</context>
<context>
    <name>Carried</name>
    <message>
        <source>new entries: all of it is here already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CatchPartCard</name>
    <message>
        <source>Part %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount of this part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moths of the pest in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave this part out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Correction</name>
    <message>
        <source>What stood here before stays in the history.</source>
        <translation type="unfinished">Ce qui était inscrit avant reste dans l’historique.</translation>
    </message>
    <message>
        <source>Keep the correction</source>
        <translation>Conserver la correction</translation>
    </message>
    <message>
        <source>Nothing changed yet</source>
        <translation>Rien n’est changé encore</translation>
    </message>
</context>
<context>
    <name>CorrectionEntry</name>
    <message>
        <source>Empty: not observed</source>
        <translation>Vide&#xa0;: non observé</translation>
    </message>
</context>
<context>
    <name>CouldNotCountCard</name>
    <message>
        <source>Could not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count after all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CouldNotCountSheet</name>
    <message>
        <source>Could not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why could it not be counted?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is kept without a number. That is neither zero nor a missed week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to counting</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CountMethod</name>
    <message>
        <source>counted one by one</source>
        <translation>un par un</translation>
    </message>
    <message>
        <source>from a part by volume</source>
        <translation>d’après une partie, au volume</translation>
    </message>
    <message>
        <source>from a part by weight</source>
        <translation>d’après une partie, à la masse</translation>
    </message>
</context>
<context>
    <name>Decide</name>
    <message>
        <source>Larvae held against your threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished">Précautions</translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower it for a dry season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DecideMoney</name>
    <message>
        <source>Control costs, all together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Application</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crop lost in the wheel tracks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In parts: product, application, wheel tracks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The harvest brings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A very dry season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold divided by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own judgement; the published number is preset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About this number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DecideTiming</name>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days before harvest, from the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They count to cutting: swathing or straight cutting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting planned on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DecideWhy</name>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search more frames in this field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DecideWorking</name>
    <message>
        <source>The threshold, step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often the stop rule errs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many frames, and the textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the loss per larva comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources</source>
        <translation type="unfinished">Sources</translation>
    </message>
</context>
<context>
    <name>Decided</name>
    <message>
        <source>control the larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave the field alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Decision</name>
    <message>
        <source>one more frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop is cut already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting is %1 away, but the label asks for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below the threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too close to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within the time for control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control would cost more than the larvae do. Leave the field as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search more frames.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again in a few days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at crop stage, pods and larvae: whether it is the right time is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control would pay for itself, if the label and your adviser allow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too late for control to help here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop is at BBCH %1; the window opens at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of the larvae are %3 mm or longer; it takes %2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pod is damaged yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop is at BBCH %1; the window closed at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of the pods are damaged; the decision comes before %2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop is at BBCH %1, within %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of the larvae are %2 mm or longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of the pods are damaged: decide before it is %2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The label&apos;s %1 before cutting leave %2, today included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said: the crop stage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said: how many larvae have reached the size to control.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said: how many pods are damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said: the days before harvest on the label, or the day of cutting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the label, counted to cutting, the last day is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A good day to look again: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean, %1, is below the threshold of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean, %1, is above the threshold of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The threshold of %3 lies within the range, %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frames searched: %1. That is too few to say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance that the field is over the threshold is %1 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The threshold is divided by %1 for a dry season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The threshold stands at its floor, %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The threshold lies outside what has been published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too early for control.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is within the time for control.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too late for control.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether it is the time for control is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 would probably settle it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a price above %1 control would pay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a price below %1 control would not pay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a cost above %1 control would not pay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a cost below %1 control would pay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called a dry season, the threshold would be %1, and control would pay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not called a dry season, the threshold would be %1, and control would not pay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking again on %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>No district</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>the first and the last day of a week</extracomment>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>%1 of %2 in</source>
        <extracomment>traps that reported, traps that are expected to</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of them could not be counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished">compté</translation>
    </message>
    <message>
        <source>could not count</source>
        <translation type="unfinished">relevé impossible</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trap counts of the week %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hello,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hello %1,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the week %1 no count has arrived here yet from:
- %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you have been there, send the number of moths and the day, in any way that is easy for you. Zero is a count too. If the trap could not be counted, or you could not go, that helps as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thank you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thank you,
%1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskDetail</name>
    <message>
        <source>To look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trap is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys move in the list; Enter goes to what can be done, Escape back to the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits, the latest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The season of this trap</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskFlag</name>
    <message>
        <source>It stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskHead</name>
    <message>
        <source>Week before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type in counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traps</source>
        <extracomment>lines of the desk; a number may follow each</extracomment>
        <translation type="unfinished">Pièges</translation>
    </message>
    <message>
        <source>Late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records are being looked through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to look at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing came in since you last looked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trap is expected to report for this week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space marks a line, A all of them, S says that they stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have seen these</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskRow</name>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskTable</name>
    <message>
        <source>This week’s desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands: the one marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They stand: %1 marked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskText</name>
    <message>
        <source>%1, %2</source>
        <extracomment>a day, and how a count was reported: &quot;14 Jul, by phone&quot;</extracomment>
        <translation type="unfinished">%1&#xa0;: %2 {1,?}</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>District</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskVisit</name>
    <message>
        <source>Let it count again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeviceCard</name>
    <message>
        <source>%1 (%2)</source>
        <comment>name of a device, remark</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it a main device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is lost: end it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End “%1”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything of it that is here now stays. Whatever it sends from now on is kept aside, until you let it in piece by piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DifferenceCard</name>
    <message>
        <source>%1 · %2</source>
        <comment>value, who and when</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another value, in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another value</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Differences</name>
    <message>
        <source>Differences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both values stay in the history, whichever you choose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A coordinator settles these. Until then the highest value is drawn, and marked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where two people say different things of the same, both stand here until you choose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proposals to records that stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed since you said that it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands as it is now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept aside: stored and passed on, but not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that were refused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a value above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settle it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settle %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Due</name>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <extracomment>&quot;3 days ago&quot;</extracomment>
        <translation>il y a %1</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>le jour</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>l’emplacement</translation>
    </message>
    <message>
        <source>the lure</source>
        <translation>la phéromone</translation>
    </message>
    <message>
        <source>the killing strip</source>
        <translation>la plaquette insecticide</translation>
    </message>
    <message>
        <source>the height of the entrance</source>
        <translation>la hauteur de l’entrée</translation>
    </message>
    <message>
        <source>take the lure away</source>
        <translation>emporter la phéromone</translation>
    </message>
    <message>
        <source>take the killing strip away, by its label</source>
        <translation>retirer la plaquette insecticide selon son étiquette</translation>
    </message>
    <message>
        <source>wash the trap</source>
        <translation>laver le piège</translation>
    </message>
    <message>
        <source>finish setting up</source>
        <translation>terminer l’installation</translation>
    </message>
    <message>
        <source>count</source>
        <translation>faire le relevé</translation>
    </message>
    <message>
        <source>put in a lure</source>
        <translation>mettre une phéromone</translation>
    </message>
    <message>
        <source>change the lure</source>
        <translation>remplacer la phéromone</translation>
    </message>
    <message>
        <source>put in a killing strip</source>
        <translation>mettre une plaquette insecticide</translation>
    </message>
    <message>
        <source>change the killing strip</source>
        <translation>remplacer la plaquette insecticide</translation>
    </message>
    <message>
        <source>moths alive: change the killing strip</source>
        <translation>papillons vivants&#xa0;: remplacer la plaquette insecticide</translation>
    </message>
    <message>
        <source>raise the stake</source>
        <translation>relever le piège</translation>
    </message>
    <message>
        <source>take it down</source>
        <translation>retirer le piège</translation>
    </message>
    <message>
        <source>finish taking it down</source>
        <translation>terminer le retrait</translation>
    </message>
    <message>
        <source>look for larvae</source>
        <translation>chercher les larves</translation>
    </message>
    <message>
        <source>Counted every week; the next count day is %1.</source>
        <translation>Relevé chaque semaine&#xa0;; le prochain jour de relevé est le %1.</translation>
    </message>
    <message>
        <source>%1 since it was emptied.</source>
        <translation>%1 depuis que le piège a été vidé.</translation>
    </message>
    <message>
        <source>The count day was %1.</source>
        <translation>Le jour de relevé était le %1.</translation>
    </message>
    <message>
        <source>A count day went by. What is in the trap now is the catch of the whole time.</source>
        <translation>Un jour de relevé est passé. Ce que le piège contient est la capture de toute la période.</translation>
    </message>
    <message>
        <source>The lure was found gone %1.</source>
        <translation>L’absence de la phéromone a été constatée %1.</translation>
    </message>
    <message>
        <source>From %1 the lure is past the date on its packet.</source>
        <translation>À partir du %1, la phéromone dépasse la date de son sachet.</translation>
    </message>
    <message>
        <source>The lure is %1 past the date on its packet.</source>
        <translation>La phéromone dépasse de %1 la date de son sachet.</translation>
    </message>
    <message>
        <source>On %1 the lure has been in for %2, as long as it lasts.</source>
        <translation>Le %1, la phéromone sera en place depuis %2, soit toute sa durée.</translation>
    </message>
    <message>
        <source>The lure has been in for %1; it lasts about %2.</source>
        <translation>La phéromone est en place depuis %1&#xa0;; elle dure environ %2.</translation>
    </message>
    <message>
        <source>The killing strip was found gone %1.</source>
        <translation>L’absence de la plaquette insecticide a été constatée %1.</translation>
    </message>
    <message>
        <source>Moths were found alive in the bucket %1: the strip is spent.</source>
        <translation>Des papillons vivants ont été trouvés dans le seau %1&#xa0;: la plaquette est épuisée.</translation>
    </message>
    <message>
        <source>On %1 the killing strip has been in for %2, as long as it lasts.</source>
        <translation>Le %1, la plaquette insecticide sera en place depuis %2, soit toute sa durée.</translation>
    </message>
    <message>
        <source>The killing strip has been in for %1; it lasts about %2.</source>
        <translation>La plaquette insecticide est en place depuis %1&#xa0;; elle dure environ %2.</translation>
    </message>
    <message>
        <source>Set it to %1.</source>
        <translation>Réglez-la à %1.</translation>
    </message>
    <message>
        <source>This stake may not reach high enough.</source>
        <translation>Ce piquet n’est peut-être pas assez haut.</translation>
    </message>
    <message>
        <source>Entrance at %1, canopy at %2.</source>
        <translation>Entrée à %1, couvert à %2.</translation>
    </message>
    <message>
        <source>At its pace the crop has reached it; an estimate from the last heights.</source>
        <translation>À ce rythme, la culture l’a atteinte&#xa0;; estimation d’après les dernières hauteurs.</translation>
    </message>
    <message>
        <source>At its pace the crop reaches it about %1; an estimate from the last heights.</source>
        <translation>À ce rythme, la culture l’atteint vers le %1&#xa0;; estimation d’après les dernières hauteurs.</translation>
    </message>
    <message>
        <source>The highest catch, %1 in %2, is past; larvae are looked for about %3 after it. A trap catch never decides a spray.</source>
        <translation>La plus forte capture, %1 en %2, est passée&#xa0;; on cherche les larves environ %3 après. Une capture ne décide jamais d’un traitement.</translation>
    </message>
    <message>
        <source>Finish setting up</source>
        <translation>Terminer l’installation</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>Change the lure</source>
        <translation>Remplacer la phéromone</translation>
    </message>
    <message>
        <source>Change the killing strip</source>
        <translation>Remplacer la plaquette insecticide</translation>
    </message>
    <message>
        <source>Raise the stake</source>
        <translation>Relever le piège</translation>
    </message>
    <message>
        <source>Take down</source>
        <translation>Retirer le piège</translation>
    </message>
    <message>
        <source>Finish taking down</source>
        <translation>Terminer le retrait</translation>
    </message>
    <message>
        <source>Look for larvae</source>
        <translation>Chercher les larves</translation>
    </message>
    <message>
        <source>count on %1</source>
        <translation>relevé le %1</translation>
    </message>
    <message>
        <source>count overdue</source>
        <translation>relevé en retard</translation>
    </message>
    <message>
        <source>count due</source>
        <translation>relevé à faire</translation>
    </message>
    <message>
        <source>count overdue, %1</source>
        <translation>relevé en retard, %1</translation>
    </message>
    <message>
        <source>count due, %1</source>
        <translation>relevé à faire, %1</translation>
    </message>
    <message>
        <source>scouting for larvae opens about %1</source>
        <translation>dépistage des larves à partir du %1 environ</translation>
    </message>
    <message>
        <source>look for larvae until %1</source>
        <translation>chercher les larves jusqu’au %1</translation>
    </message>
    <message>
        <source>take it down on %1</source>
        <translation>retirer le piège le %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>a task and the day by which it is to be done: &quot;change the lure by 17 Jul&quot;</extracomment>
        <translation>%1 d’ici le %2</translation>
    </message>
    <message>
        <source>Still to do: %1.</source>
        <translation>Reste à faire&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Traps come down from %1, after a last count.</source>
        <translation>Les pièges sont retirés à partir du %1, après un dernier relevé.</translation>
    </message>
    <message>
        <source>Report by %1</source>
        <translation>À transmettre d’ici le %1</translation>
    </message>
    <message>
        <source>Report by %1, %2</source>
        <extracomment>a day and a time of day</extracomment>
        <translation>À transmettre d’ici le %1, %2</translation>
    </message>
</context>
<context>
    <name>EndReason</name>
    <message>
        <source>season over</source>
        <translation>saison terminée</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>déplacé</translation>
    </message>
    <message>
        <source>replaced by a new trap</source>
        <translation>remplacé par un nouveau piège</translation>
    </message>
</context>
<context>
    <name>EntryScale</name>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>“%1” is not a number. Type it in digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a whole number. Leave out the part after the point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 must be from %2 to %3. Look at the number again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is too long. Shorten it to %2 characters or fewer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty. Fill it in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar. Write it as year-month-day, such as 2026-07-14.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a place. Type latitude and longitude in degrees, such as 52.1579, -106.6702.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be “%2”. Choose one of: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be “%2”. Choose one of the values offered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The counted part is larger than the whole catch. Check both amounts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One counted part shows no spread. Count a second part of the catch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The protocol file %1 cannot be read: line %2, %3. Correct that line, or put the file back as it came.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The protocol file %1 is not sound: line %2, %3. Correct that line, or put the file back as it came.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no protocol for “%1”. Check the name, or add its protocol file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The protocol for %1 has no bands for the trap type “%2”. The catch can be shown, but not as a band.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no store at %1. Check the name of the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a Duskrow store. It was left as it is. Choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store %1 is damaged. It was left as it is. Keep the file, and go on from a copy or an exchange with others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store %1 was written by a newer version of Duskrow. It was left as it is. Update Duskrow, then open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store %1 was written by an older version of Duskrow. Open it once in Duskrow, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has the store %1 open. Close it there, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store %1 cannot be written to. Check that you may write in its folder, or move it to one where you may.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is already a file at %1. It was left as it is. Choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no room left where %1 lies, so nothing was kept just now. Make room, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk did not read or write %1 as it should, so nothing was kept just now. Try again, and copy the file elsewhere if it goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key of this installation at %1 cannot be read or made. Check that you may read and write there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An entry in the log cannot be read (%1). It was left as it is; update Duskrow if others use a newer version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This %1 is not in the store. Go back and choose it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 cannot be read. Check its name and that you may read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written. Check that its folder exists, has room, and lets you write.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture %1 cannot be used. Choose a picture file of at most 32 MB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no position right now. Wait under the open sky, or type the coordinates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The position log %1 cannot be read. Choose a file of NMEA sentences.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no %1 called “%2”. Check the spelling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than one %1 is called “%2”. Name it more fully.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a format that can be written. Choose one of: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a time of day. Type hours and minutes, such as 18:00.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cost is in %1 but the price is in %2. Give both in the same dollars.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cost is given both as one sum and in parts. Leave one of them out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The protocol for %1 has no threshold for the crop “%2”. Count larvae all the same, and ask an adviser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 of the table cannot be read. Close its quotes, or give it all its columns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table has no column “%1”. Name the columns on its first line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 holds no count. Write one in each row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 has no column “%2”. Name its columns in the first row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” is not a count. Write one whole number in each row, such as 7.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is not finished copying. Wait a little and exchange again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came in is damaged or is no part of an exchange (%1). It was kept aside; ask for it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came in is larger than an exchange allows (%1). It was kept aside; tell the coordinator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came in is not signed by the device it names. It was kept aside; tell the coordinator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” is not a place. Write latitude and longitude in degrees, such as 52.1579, -106.6702.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” is not the number of a stop. Number the stops from 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” does not say whether the field is infested. Write yes or no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The database at %1 does not answer. See that it runs and that its address is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no invitation. It has ten letters and digits, such as 7K3QM-2XV9A.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is too little memory. Close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody can be served at %1. Another program may use it, or it is no address of this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came in was written by a newer version of Duskrow (%1). It was kept and is passed on; update Duskrow to use it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” belongs to another programme. It was kept aside; open that programme to take it in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder “%1” is not there. Plug the stick in or wait until the folder is connected, then exchange again. Everything is kept on this device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are more files in “%1” than an exchange looks through. Move foreign files out of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a file that Duskrow wrote. Choose another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” stops before its end. All that was whole was taken in; ask for the file again for the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub at %1 does not answer. Everything is kept on this device and goes on its way with the next exchange.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What answers at %1 is not a hub: perhaps a log-in page of the network here. Open a browser once, or try another network.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What answers at %1 cannot prove that it is this hub, so nothing was sent. Try another network, or ask whoever runs the hub about its certificate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub at %1 says: %2. Everything is kept on this device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub at %1 kept entries aside (%2). They are safe there and here; the coordinator can let them in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device is not enrolled at %1, or was ended there. Ask the coordinator for an invitation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody knows this code here. Look at the ten characters again, or ask the coordinator for a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This invitation was good until %1. Ask the coordinator for a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A device has come in with this code already. Ask the coordinator for a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than one programme or founder answers to this code. Ask the coordinator for the whole invitation, as a link or picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device is in that programme already, with the key %1. Open its store; if that is gone for good, move the key away and join again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has said who holds the store %1. Open it in Duskrow once and choose your name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a coordinator of the programme may do this. Ask yours to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the device that founded the programme, or one made its equal, may do this. Do it there.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EstimateCard</name>
    <message>
        <source>Look at the counted parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count each moth instead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Exchange</name>
    <message>
        <source>You have joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records of the programme are not here yet. Exchange by the way the invitation came, or open a file from the coordinator. If nothing comes, the coordinator has to let this device in first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on this phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExchangeFile</name>
    <message>
        <source>One file to hand on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For whom?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everybody: all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only what is not known to have reached this person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation type="unfinished">Écrire le fichier</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file from somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its name ends in .dusk. You see what it would bring before anything is taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried files (*.dusk)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExchangeText</name>
    <message>
        <source>The device that wrote it is not one of the programme.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was written after this device was ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was written after its author&apos;s last day in the programme.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is about a field that is neither its author&apos;s nor lent to him.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names another field than its record belongs to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a coordinator may say this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a main device of the programme may say this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It settles a difference between others; a coordinator does that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record stands; this waits until a coordinator takes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One new entry came in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n new entries came in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One photograph came in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photographs came in.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>What was new here is handed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One photograph is handed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are handed over.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing new on either side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped: what was done until then is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bundle waits for an earlier one of the same device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n bundles wait for an earlier one of the same device.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One file is not finished copying; it is taken in next time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n files are not finished copying; they are taken in next time.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One file was refused and is kept aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n files were refused and are kept aside.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>A device was copied or restored: different entries stand under one number. All are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today, %1</source>
        <comment>time of day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>a day of this year</comment>
        <translation type="unfinished">d MMMM</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time of day</comment>
        <translation type="unfinished">%1&#xa0;: %2 {1,?}</translation>
    </message>
    <message>
        <source>on this phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not count by the rules of the programme.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExchangeWays</name>
    <message>
        <source>Ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>when, what came of it</comment>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>No longer this way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever can open this folder can read all of it: counts, fields and names. A stick or a folder of the programme’s own is best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A folder that the others can open too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange by this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address of the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Such as hub.example, from whoever keeps it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Founding code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only to bring the programme to the hub for the first time. Otherwise leave it empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange by this hub</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldDay</name>
    <message>
        <source>Today, %1</source>
        <translation>Aujourd’hui, %1</translation>
    </message>
    <message>
        <source>Yesterday, %1</source>
        <translation>Hier, %1</translation>
    </message>
    <message>
        <source>A day is written as year-month-day, for example 2026-07-08.</source>
        <translation>Un jour s’écrit année-mois-jour, par exemple 2026-07-08.</translation>
    </message>
    <message>
        <source>%1: one day earlier</source>
        <translation>%1&#xa0;: un jour plus tôt</translation>
    </message>
    <message>
        <source>%1: one day later</source>
        <translation>%1&#xa0;: un jour plus tard</translation>
    </message>
</context>
<context>
    <name>FieldName</name>
    <message>
        <source>the reason for taking it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the region</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether it is invented</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first day of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the count day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the days of grace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day to report by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time to report by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the district</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whose field it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the landowner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day the landowner said yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the way in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day of seeding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of moths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the version of the protocol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trap type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day of set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time of set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the longitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the accuracy of the position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the position was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time of the position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of fixes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the trap is clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the lure reminder was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the lure is in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lot of the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the expiry day of the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the killing strip is in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the height of the entrance</source>
        <translation>la hauteur de l’entrée</translation>
    </message>
    <message>
        <source>the height of the canopy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the height rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the distance to the field edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the distance to the farmyard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the distance to a strong light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day the trap was taken down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why the trap ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trap beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trap it replaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the lure was taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the killing strip was taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the bucket was washed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the spare lures are frozen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day</source>
        <translation>le jour</translation>
    </message>
    <message>
        <source>the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who borrows the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether it was counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why it could not be counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of other moths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of unsure moths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how it was counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the counts of the parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the amounts of the parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the amount of the whole catch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the low end of the count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the high end of the count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the trap was emptied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the count is “at least”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the field was sprayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was sprayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day of spraying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the re-entry time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the lure is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the killing strip is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether moths were alive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether flowering is over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of the sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of moths in the sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day it was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day it was sent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day it was received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day it was named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it was sent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who named it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it was named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the catch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of traps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of seasons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many of them are the pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the crop stage (BBCH)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the area of the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the walk is finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scouting walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stop in the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the larvae by size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of sick larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pods looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pods damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cost of control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cost of the product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cost of the application</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cost of the wheel tracks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the unit of the cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the price of the harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the unit of the price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the divisor for a dry season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the days of the label before harvest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day of cutting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the verdict that was shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day to look again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dispersion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share of wrong calls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the precision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cost on an acre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cost on a hectare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the price of a bushel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the price of a tonne</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dry-season divisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share of damaged pods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the days before harvest on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“infested”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the way of measuring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the season is dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the address of the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of the device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the public key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name of the device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether it may name coordinators</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last change of it that counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the invitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the proof of the invitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the key it goes on from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the record stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why it is left out of the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how it was reported</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldNumber</name>
    <message>
        <source>A number is needed here.</source>
        <translation>Il faut un nombre ici.</translation>
    </message>
    <message>
        <source>Only a number can stand here, for example %1.</source>
        <translation>Seul un nombre convient ici, par exemple %1.</translation>
    </message>
    <message>
        <source>Only a whole number can stand here, for example %1.</source>
        <translation>Seul un nombre entier convient ici, par exemple %1.</translation>
    </message>
    <message>
        <source>It must lie between %1 and %2.</source>
        <translation>La valeur doit être entre %1 et %2.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1: less by %2</source>
        <translation>%1&#xa0;: %2 de moins</translation>
    </message>
    <message>
        <source>%1: more by %2</source>
        <translation>%1&#xa0;: %2 de plus</translation>
    </message>
</context>
<context>
    <name>FieldPage</name>
    <message>
        <source>Going on where this set-up stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap stands in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a field of this season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it shall stand on every list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What people here call it, or its land description</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>District</source>
        <translation type="unfinished">District</translation>
    </message>
    <message>
        <source>Seeded on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not needed; it helps to foresee the crop stage.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldPath</name>
    <message>
        <source>Choose a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Figure</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>The trap</source>
        <translation>Le piège</translation>
    </message>
    <message>
        <source>Traps in a field</source>
        <translation>Pièges par champ</translation>
    </message>
    <message>
        <source>The lure draws</source>
        <translation>La phéromone attire</translation>
    </message>
    <message>
        <source>Lures in a trap</source>
        <translation>Phéromones par piège</translation>
    </message>
    <message>
        <source>A lure lasts</source>
        <translation>Durée d’une phéromone</translation>
    </message>
    <message>
        <source>A sealed lure keeps at up to %1</source>
        <translation>Conservation d’une phéromone scellée jusqu’à %1</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 mois</translation>
    </message>
    <message>
        <source>A killing strip lasts</source>
        <translation>Durée d’une plaquette insecticide</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Entrance above the ground</source>
        <translation>Entrée au-dessus du sol</translation>
    </message>
    <message>
        <source>The stake reaches</source>
        <translation>Portée du piquet</translation>
    </message>
    <message>
        <source>Entrance over the canopy at least</source>
        <translation>Entrée au-dessus du couvert, au moins</translation>
    </message>
    <message>
        <source>Its place</source>
        <translation>Son emplacement</translation>
    </message>
    <message>
        <source>%1, %2: height of the canopy</source>
        <translation>%1, %2&#xa0;: hauteur du couvert</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>La saison</translation>
    </message>
    <message>
        <source>Begins on or after</source>
        <translation>Commence à partir du</translation>
    </message>
    <message>
        <source>Its weeks begin on</source>
        <translation>Ses semaines commencent le</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dure</translation>
    </message>
    <message>
        <source>Traps are set up</source>
        <translation>Installation des pièges</translation>
    </message>
    <message>
        <source>Too late for setting up from</source>
        <translation>Trop tard pour installer à partir du</translation>
    </message>
    <message>
        <source>The first %1 come after set-up by</source>
        <translation>Les premiers individus (%1) viennent après l’installation</translation>
    </message>
    <message>
        <source>First count</source>
        <translation>Premier relevé</translation>
    </message>
    <message>
        <source>From count to count</source>
        <translation>D’un relevé à l’autre</translation>
    </message>
    <message>
        <source>Usual peak of the flight</source>
        <translation>Pic habituel du vol</translation>
    </message>
    <message>
        <source>Traps come down</source>
        <translation>Retrait des pièges</translation>
    </message>
    <message>
        <source>Flight and warmth</source>
        <translation>Vol et chaleur</translation>
    </message>
    <message>
        <source>Degree-days count from</source>
        <translation>Degrés-jours comptés à partir du</translation>
    </message>
    <message>
        <source>Base temperature</source>
        <translation>Température de base</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Limite supérieure</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Set up when pupae have developed by</source>
        <translation>Installer quand les pupes sont développées à</translation>
    </message>
    <message>
        <source>Moths come after that by</source>
        <translation>Les papillons viennent ensuite après</translation>
    </message>
    <message>
        <source>Eggs hatch after laying by</source>
        <translation>Éclosion après la ponte</translation>
    </message>
    <message>
        <source>Larvae do damage after laying by</source>
        <translation>Larves nuisibles après la ponte</translation>
    </message>
    <message>
        <source>Bands of a whole season&apos;s catch</source>
        <translation>Classes de capture d’une saison entière</translation>
    </message>
    <message>
        <source>%1 to under %2</source>
        <translation>de %1 à moins de %2</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>A catch on an edge</source>
        <translation>Une capture égale à une limite</translation>
    </message>
    <message>
        <source>belongs to the higher band</source>
        <translation>appartient à la classe supérieure</translation>
    </message>
    <message>
        <source>Looking for larvae</source>
        <translation>Recherche des larves</translation>
    </message>
    <message>
        <source>Begins after the peak catch by</source>
        <translation>Commence après le pic des captures</translation>
    </message>
    <message>
        <source>Crop stage</source>
        <translation>Stade de la culture</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Cadre</translation>
    </message>
    <message>
        <source>Frames expected</source>
        <translation>Cadres attendus</translation>
    </message>
    <message>
        <source>Frames at least</source>
        <translation>Cadres au moins</translation>
    </message>
    <message>
        <source>Between stops</source>
        <translation>Entre les arrêts</translation>
    </message>
    <message>
        <source>Larva: %1</source>
        <translation>Larve&#xa0;: %1</translation>
    </message>
    <message>
        <source>A larva just hatched</source>
        <translation>Larve à l’éclosion</translation>
    </message>
    <message>
        <source>A larva full grown</source>
        <translation>Larve à maturité</translation>
    </message>
    <message>
        <source>Smallest larva worth controlling</source>
        <translation>Plus petite larve à combattre</translation>
    </message>
    <message>
        <source>The economic threshold</source>
        <translation>Le seuil économique</translation>
    </message>
    <message>
        <source>Yield lost for a larva on a square metre</source>
        <translation>Rendement perdu par larve au mètre carré</translation>
    </message>
    <message>
        <source>A bushel weighs</source>
        <translation>Masse d’un boisseau</translation>
    </message>
    <message>
        <source>In a dry season the threshold is divided by</source>
        <translation>En saison sèche, le seuil est divisé par</translation>
    </message>
    <message>
        <source>Prices it was published for</source>
        <translation>Prix pour lesquels il a été publié</translation>
    </message>
    <message>
        <source>Costs it was published for</source>
        <translation>Coûts pour lesquels il a été publié</translation>
    </message>
    <message>
        <source>Never below</source>
        <translation>Jamais en dessous de</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>nobody has published it</source>
        <translation>personne ne l’a publié</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semaines</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <extracomment>a day of any year; see QLocale::toString for the letters</extracomment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 degree-days</source>
        <translation>%1 degrés-jours</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>BBCH %1</source>
        <translation>BBCH %1</translation>
    </message>
    <message>
        <source>%1 larvae per m²</source>
        <translation>%1 larves par m²</translation>
    </message>
    <message>
        <source>%1 dollars a bushel</source>
        <translation>%1 dollars le boisseau</translation>
    </message>
    <message>
        <source>%1 dollars an acre</source>
        <translation>%1 dollars l’acre</translation>
    </message>
    <message>
        <source>%1 bushels an acre</source>
        <translation>%1 boisseaux à l’acre</translation>
    </message>
    <message>
        <source>males</source>
        <translation>mâles</translation>
    </message>
    <message>
        <source>females</source>
        <translation>femelles</translation>
    </message>
    <message>
        <source>males and females</source>
        <translation>mâles et femelles</translation>
    </message>
    <message>
        <source>Thresholds it was published for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the money of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Years of the trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Varieties in the trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crop stage for control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae of the size to control, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Be ready for larvae of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide before this share of the pods is damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade was lost from a share of damaged pods of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canadian dollars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>United States dollars</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FixMethod</name>
    <message>
        <source>by satellite</source>
        <translation>par satellite</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>saisi</translation>
    </message>
</context>
<context>
    <name>Flag</name>
    <message>
        <source>%1 min</source>
        <extracomment>minutes</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished">%1 en %2</translation>
    </message>
    <message>
        <source>%1 in %2, or %3 in 7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; the %2 traps around it caught %3 in 7 nights for the same week, from which about %4 were to be expected.</source>
        <extracomment>&quot;47 moths in 7 nights&quot;; a number of traps; &quot;5, 7, 3&quot;; a number of moths</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit without a count names a trap that is not here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count of %1 names a trap that is not here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 traps, %2 from one to the next by straight lines, are noted within %3 by one person; at 130 km/h the way takes %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the future</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After take-down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Perhaps entered twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second count of a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After another trap took its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer than before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long since emptied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away from the trap’s place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faster than anybody drives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far above the traps around</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far below the traps around</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far above the visit before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Very large catch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Many counts end in 0 or 5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is dated %1 after today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is dated %1 before the trap was set up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is dated %1 after the trap was taken down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two visits to this trap on this day both say %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, though the trap was emptied earlier on that day, with %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is dated %1 after another trap was set up in its stead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, after %2 at the visit before, which did not empty the trap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap had not been emptied for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Noted %1 from the trap’s place; fixes within %2 and %3 explain up to %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2, after %3 in %4; it could not be held against traps around it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at one visit, where every catch above %2 is asked about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of one person’s %2 counts of ten moths and more end in 0 or 5, where chance alone gives one in five.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No good count gets this flag while this device has the right day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No good count gets this flag if the day of set-up is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No good count gets this flag if the day of take-down is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No good count gets this flag if the other trap’s day of set-up is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every good count gets this flag until its trap arrives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every two good counts that are alike get this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every second good count of a day gets this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every good count below the one before gets this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every good count over so many nights gets this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good counts that are typed in later get this flag as well; they may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most 1 good fix in %1 gets this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 good count in %1 gets this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 person in %1 who counts every moth gets this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has measured how many good counts get this flag; it may be real.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in 7 nights, %2 away</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FrameExtras</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pods, remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pods looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: none looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of these, damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sick: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One sick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sick or parasitised: %1. One more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FrameTally</name>
    <message>
        <source>It is the same stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold and decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what control costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frames so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the walk, or see its history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop here: to the decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enough: to the decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same stop as the last frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then the two count as one look at the field.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Frames</name>
    <message>
        <source>%1 stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <extracomment>&quot;6 stops with 9 frames&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3 (%4 a frame).</source>
        <extracomment>&quot;10 frames, 55 larvae: 22 larvae per m² (5.5 a frame).&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 fields right at your threshold (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 fields at half your threshold (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 fields a third below your threshold (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 fields half as dense again as your threshold (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 fields at twice your threshold (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 fields with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 larvae per m²</source>
        <translation type="unfinished">%1 larves par m²</translation>
    </message>
    <message>
        <source>No frame was counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few to know how much the field varies, so there is no range. Count more frames.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None found: the field probably has fewer than %1, but not surely none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few frames for a useful range: it goes from %1 to %2 larvae per m².</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole field probably has between %1 and %2 larvae per m² (95 % range; approximate where a walk stopped early).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance that the field has more than %1 is below 1 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance that the field has more than %1 is above 99 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance that the field has more than %1 is about %2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after %2: far enough below the threshold to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after %2: far enough above the threshold to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After %1 the field is near the threshold. Look again in two or three days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on: the total is low, but the counts are so uneven that a patch may be missed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After %1 stop at %2 or fewer in all (below), or at %3 or more (above).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After %1 stop at %2 or more in all (above); it is too early to stop below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below your threshold of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above your threshold of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too close to call at your threshold of %1 all the same: the counts are too uneven to trust the total. Count more frames.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too close to call at your threshold of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, about %2 are called below, %3 are called above and %4 stay open.</source>
        <extracomment>&quot;Of 100 fields a third below your threshold (13 larvae per m²), about 91 are called below, ...&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A textbook range (Student’s t) would be %1 to %2 larvae per m². With so few and so uneven counts it holds the truth in 80 to 90 of 100 walks only, so it is not used here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To know a mean of %1 a frame within 50 % takes about %2, within 25 % about %3 (95 %, as patchy as k = %4).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HandlingPage</name>
    <message>
        <source>Never with bare fingers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With forceps, or tipped from its packet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HeavyCatch</name>
    <message>
        <source>A heavy catch, from a counted part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out the bees and other insects. Drain and dry the moths, mix them, then measure the whole and count a part of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume, ml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole catch, the counted parts included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count another part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths in the whole catch, an estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths: the whole and one part are needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the estimate</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HeightRule</name>
    <message>
        <source>fixed height</source>
        <translation>hauteur fixe</translation>
    </message>
    <message>
        <source>follow the canopy</source>
        <translation>suivre le couvert</translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>Withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is ever deleted: a correction stands beside what it corrects.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it stand again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryCard</name>
    <message>
        <source>%1 %2</source>
        <comment>who, did what</comment>
        <translation type="unfinished">%1 %2</translation>
    </message>
</context>
<context>
    <name>Invite</name>
    <message>
        <source>Invitation for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another device of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invite somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code is good once. It stands only here: hand it on before you leave this page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes part as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grower</source>
        <translation type="unfinished">producteur</translation>
    </message>
    <message>
        <source>agronomist</source>
        <translation type="unfinished">agronome</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation type="unfinished">coordonnateur</translation>
    </message>
    <message>
        <source>The code is good until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once only. A code that was lost is replaced by a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have handed it on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Join</name>
    <message>
        <source>Join by a code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coordinator gave you ten characters, or a text or picture that holds them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code, or the text you were sent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Such as 7K2QD-M4XWA. Capital letters and hyphens do not matter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where is the programme?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at a hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address of the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is in the text and in the picture; else ask the coordinator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder that you share with the others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file from the coordinator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its name ends in .dusk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried files (*.dusk)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this device is called</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coordinator sees it beside your name, to tell your devices apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring along what I kept alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, under your name. The present file stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeptPage</name>
    <message>
        <source>The trap is kept on this device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another trap at this field</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the last digit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no number yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KindName</name>
    <message>
        <source>programme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>district</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pest in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>protocol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scouting walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>invitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assignment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>admission</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LarvaRuler</name>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished">%1 mm</translation>
    </message>
    <message>
        <source>Outlines of larvae, as long as in life: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm, drawn smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm, life size</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Larvae</name>
    <message>
        <source>Larvae</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No field was scouted yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About two weeks after the most moths, search frames for larvae. Each field stands here with what was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scouted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scout a field</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LastPage</name>
    <message>
        <source>You can keep the trap and do it later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photograph of the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the photograph out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photograph of the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LateCard</name>
    <message>
        <source>Nothing has come in: a message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it as e-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LeaveOutSheet</name>
    <message>
        <source>Say why, in a few words: everybody who looks at this count reads it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave this count out of the picture?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit stays as it is. Sums, seasons and the region leave its count out, and the nights before it are not known. You can let it count again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For example: the trap lay on its side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It counts on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeAct</name>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeEnd</name>
    <message>
        <source>End of the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found gone on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken down on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap has ended: keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No count today. Empty it and count a last time first?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count now</source>
        <translation>Faire le relevé</translation>
    </message>
    <message>
        <source>Why does it end?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it caught since the last count is gone with it: its total becomes “at least”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lure out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed and taken away from the field, as its label says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Killing strip out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With nitrile gloves, disposed of as its label says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bucket washed and stored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apart by species: a trap keeps the scent of its lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare lures frozen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed; leave it off when there are none</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeLend</name>
    <message>
        <source>Lend the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To whom?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then it is yours again. It may come back earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To one of the programme?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they count there until then is theirs to report.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeLure</name>
    <message>
        <source>Before you open the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never with bare fingers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With forceps, or tipped from its packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap cut open; the lure hangs in its basket under the lid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new lure, in its basket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot on the packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use by, on the packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I handle it like that</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeMove</name>
    <message>
        <source>Move the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres: the new place is known this well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for the first fix, under the open sky</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device finds no position by itself. Type the coordinates, or name a position log in the settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For example 52.15790</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>West has a minus: -106.67020</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the coordinates instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the place again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands here now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeOfTrap</name>
    <message>
        <source>day not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entrance set to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lent to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lure out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>killing strip out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bucket washed and stored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminés</translation>
    </message>
    <message>
        <source>Ended: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still to do: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished">inconnu</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landowner’s yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entrance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canopy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lure lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lure use by</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LifeOverview</name>
    <message>
        <source>Life of this trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It still stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lend it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History of the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new trap at the same spot?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This one ends today and keeps its count; the new one starts at zero. Count what is in the bucket first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this one, set up the new one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does it still stand in the field?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then its end is taken back, and its counts go on. The history keeps both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, it still stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No, it ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish taking it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the trap</source>
        <translation>Corriger le piège</translation>
    </message>
    <message>
        <source>Correct the field</source>
        <translation>Corriger le champ</translation>
    </message>
</context>
<context>
    <name>LifeRaise</name>
    <message>
        <source>Raise the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap on its stake: %1, %2. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entrance above the ground</source>
        <translation>Entrée au-dessus du sol</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
</context>
<context>
    <name>LifeStrip</name>
    <message>
        <source>New killing strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new strip is in: keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap cut open; the killing strip lies on the floor of the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new strip, on the floor of the bucket</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ListCard</name>
    <message>
        <source>due</source>
        <translation>à faire</translation>
    </message>
</context>
<context>
    <name>LureDetails</name>
    <message>
        <source>The lure was there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I put in a new lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never with bare fingers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip it from its packet, or use forceps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I did not touch the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot on its packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The killing strip was there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moths were alive in the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moths alive: the strip is spent. Change it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without its strip the trap lets moths out. Put a new one in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I put in a new strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you touch a strip</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LurePage</name>
    <message>
        <source>The trap cut open; the lure hangs in its basket under the lid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lure, in its basket under the lid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot on the packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use by, on the packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lure is not in after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on without the lure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Duskrow · an invented district</source>
        <translation>Duskrow · un district inventé</translation>
    </message>
    <message>
        <source>Duskrow</source>
        <translation>Duskrow</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lu</translation>
    </message>
</context>
<context>
    <name>MarkText</name>
    <message>
        <source>People say different things of it: the highest is drawn until it is settled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change is proposed to it, and waits for a coordinator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change of it was kept aside.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MemberPage</name>
    <message>
        <source>%1, until %2</source>
        <comment>role, last day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No device of this member has come in yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invite another device of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Works at these fields too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes part as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grower</source>
        <translation type="unfinished">producteur</translation>
    </message>
    <message>
        <source>agronomist</source>
        <translation type="unfinished">agronome</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation type="unfinished">coordonnateur</translation>
    </message>
    <message>
        <source>Leaves the programme after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is entered for later days is kept aside. Everything before it stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the last day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Members</name>
    <message>
        <source>Members and devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only this device can name coordinators</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it is lost, nobody can any more. Invite a second coordinator, or another device of yours, and make it a main device too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invited, not here yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the invitation back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invite somebody</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MothGuidePage</name>
    <message>
        <source>Which moth is it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the freshest ones. Not sure? Count it as not sure and keep it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of a %1 moth with open wings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the count</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NextCard</name>
    <message>
        <source>Bring a white tray, clean gloves, a pencil, and small bags for moths you are not sure of.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoCountReason</name>
    <message>
        <source>trap had fallen</source>
        <translation>piège tombé</translation>
    </message>
    <message>
        <source>trap was missing</source>
        <translation>piège disparu</translation>
    </message>
    <message>
        <source>bucket was flooded</source>
        <translation>seau inondé</translation>
    </message>
    <message>
        <source>catch was spoiled</source>
        <translation>capture abîmée</translation>
    </message>
    <message>
        <source>could not get to the trap</source>
        <translation>piège inaccessible</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>autre raison</translation>
    </message>
</context>
<context>
    <name>NothingOpen</name>
    <message>
        <source>Choose a trap</source>
        <translation type="unfinished">Choisissez un piège</translation>
    </message>
    <message>
        <source>Its season, its visits and its life open here.</source>
        <translation type="unfinished">Sa saison, ses visites et son suivi s’ouvrent ici.</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Question</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Conservé</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
</context>
<context>
    <name>Outcome</name>
    <message>
        <source>counted</source>
        <translation>compté</translation>
    </message>
    <message>
        <source>could not count</source>
        <translation>relevé impossible</translation>
    </message>
</context>
<context>
    <name>PageHead</name>
    <message>
        <source>Go back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>Where the frames were</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N</source>
        <extracomment>the letter beside the arrow that points to the north</extracomment>
        <translation type="unfinished">N</translation>
    </message>
    <message>
        <source>Bold: larvae. Light: number of the frame. Ring: none found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No frame knows its place, so there is no sketch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some frames lie too close together for their numbers: see the table.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PeopleText</name>
    <message>
        <source>this device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a device not known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a device of %1</source>
        <extracomment>a person and the name of the device: Ida&apos;s phone</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1’s %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>The trap stands here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres: the place is known this well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for the first fix, under the open sky</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still settling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting longer would hardly help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand where the trap will stand and wait, or use the place as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device finds no position by itself. Type the coordinates, or name a position log in the settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For example 52.15790</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>West has a minus: -106.67020</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the coordinates instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Programme</name>
    <message>
        <source>Programme</source>
        <translation>Programme</translation>
    </message>
    <message>
        <source>What stood here before stays in the history.</source>
        <translation>Ce qui était inscrit avant reste dans l’historique.</translation>
    </message>
    <message>
        <source>Programme or region</source>
        <translation>Programme ou région</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>I am a</source>
        <translation>Je suis</translation>
    </message>
    <message>
        <source>grower</source>
        <translation>producteur</translation>
    </message>
    <message>
        <source>agronomist</source>
        <translation>agronome</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation>coordonnateur</translation>
    </message>
    <message>
        <source>Traps are counted on</source>
        <translation>Les pièges sont relevés le</translation>
    </message>
    <message>
        <source>A count still belongs to its day when it is early or late by</source>
        <translation>Un relevé compte encore pour son jour s’il a, d’avance ou de retard,</translation>
    </message>
    <message>
        <source>no day</source>
        <translation>aucun jour</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>2 days</source>
        <translation>2 jours</translation>
    </message>
    <message>
        <source>3 days</source>
        <translation>3 jours</translation>
    </message>
    <message>
        <source>The reporting week starts on</source>
        <translation>La semaine de rapport commence le</translation>
    </message>
    <message>
        <source>Counts are reported by</source>
        <translation>Relevés à transmettre d’ici</translation>
    </message>
    <message>
        <source>at</source>
        <translation>à</translation>
    </message>
    <message>
        <source>Districts</source>
        <translation>Districts</translation>
    </message>
    <message>
        <source>District %1</source>
        <translation>District %1</translation>
    </message>
    <message>
        <source>Emptied, it is one no longer.</source>
        <translation>Vidé, il n’en est plus un.</translation>
    </message>
    <message>
        <source>One more district</source>
        <translation>Un district de plus</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conserver</translation>
    </message>
</context>
<context>
    <name>ProgressPanel</name>
    <message>
        <source>%1: %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProtocolSheet</name>
    <message>
        <source>Part of the protocol</source>
        <translation>Partie du protocole</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>About the numbers</source>
        <translation>À propos des chiffres</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>Each figure with where it comes from. Where nobody has published one, it says so.</source>
        <translation>Chaque chiffre avec sa provenance. Là où personne n’en a publié, c’est dit.</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>a kind of record and its day</extracomment>
        <translation type="unfinished">%1 sur %2</translation>
    </message>
    <message>
        <source>something from a newer version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>field and value</extracomment>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>who, when</comment>
        <translation type="unfinished">%1&#xa0;: %2 {1,?}</translation>
    </message>
</context>
<context>
    <name>ReportedHow</name>
    <message>
        <source>by phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by text message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on paper</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Role</name>
    <message>
        <source>grower</source>
        <translation>producteur</translation>
    </message>
    <message>
        <source>agronomist</source>
        <translation>agronome</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation>coordonnateur</translation>
    </message>
</context>
<context>
    <name>Round</name>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>what was done at a trap, and what was in it: &quot;counted, 12 moths&quot;</extracomment>
        <translation type="unfinished">%1&#xa0;: %2 {1,?}</translation>
    </message>
    <message>
        <source>%1, larvae</source>
        <extracomment>a field in which larvae are searched for</extracomment>
        <translation type="unfinished">%1, larves</translation>
    </message>
    <message>
        <source>a walk to go on with, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walked, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the stop before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the %2 of the stop before.</source>
        <extracomment>a distance and a point of the compass</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 in all, by straight lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 in all, along the lines of the survey.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops without a place come last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A suggestion: it knows no road, gate or slough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No round when it is muddy: wet soil on boots and wheels goes along to the next field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boots and tools are cleaned between fields.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One lure is to be changed: take it along closed, in a cool box.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lures are to be changed: take them along closed, in a cool box.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walking the traps of %1; %2; back by %3.</source>
        <extracomment>a programme&apos;s name, &quot;7 stops&quot;, a time of day</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If I am not, call me.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If I am not, call me or look here: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoundBefore</name>
    <message>
        <source>Before you go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>−30 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 minutes sooner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+30 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 minutes later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Telephone of whoever waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be left empty: the phone then asks for whom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is sent from here, and nobody is followed: the phone&apos;s own messages open with these words, and you send them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No messages on this device take it. Read the words out to somebody instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand to the phone&apos;s messages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoundOrder</name>
    <message>
        <source>Distances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight lines</source>
        <extracomment>how distances are reckoned: as the crow flies, or north-south and east-west</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Survey grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the grid one goes north-south and east-west, as roads run where land was surveyed in squares. Either way it is a suggestion: no road, gate or slough is known here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Infested fields last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field is infested when its latest walk was above the threshold, or when you mark it under “Change”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggest an order again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File of the stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder</source>
        <translation type="unfinished">Dossier</translation>
    </message>
    <message>
        <source>The file is called %1. Receivers and maps read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation type="unfinished">Écrire le fichier</translation>
    </message>
</context>
<context>
    <name>RoundStopCard</name>
    <message>
        <source>infested field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Infested field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This field is infested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: this field is infested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: show it on the phone&apos;s map</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoundStops</name>
    <message>
        <source>No map on this device takes a place. The file of the stops can be carried to one that does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stop today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traps to be seen to and fields to be scouted stand here on their day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done changing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the order, or mark infested fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggest again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoundWords</name>
    <message>
        <source>Round of %1</source>
        <extracomment>a day, as the name of a file&apos;s content</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An order of stops by distance. It knows no road, gate or slough.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Routes</name>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Traps</source>
        <translation>Pièges</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <source>The store could not be opened</source>
        <translation>Le registre n’a pas pu être ouvert</translation>
    </message>
    <message>
        <source>Keep it aside and begin a new one</source>
        <translation>Le mettre de côté et en commencer un nouveau</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Larvae</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SampleSheet</name>
    <message>
        <source>Sample %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Named as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1, how many were the pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Named today: %1 the pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The moths found to be the pest are added to the count of their visit. The count as it was made stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That was a mistake: one step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History of its visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct it, or see its history</source>
        <translation>Le corriger, ou voir son histoire</translation>
    </message>
</context>
<context>
    <name>SampleState</name>
    <message>
        <source>kept</source>
        <translation>conservé</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>envoyé</translation>
    </message>
    <message>
        <source>received</source>
        <translation>reçu</translation>
    </message>
    <message>
        <source>named</source>
        <translation>identifié</translation>
    </message>
</context>
<context>
    <name>Samples</name>
    <message>
        <source>Samples</source>
        <translation>Échantillons</translation>
    </message>
    <message numerus="yes">
        <source>%n to be named</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Moths nobody was sure of in the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No samples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moths counted as “not sure” become a numbered sample when the visit is kept.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Says</name>
    <message>
        <source>it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is open</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonChart</name>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>No counts yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch of the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emptied uncounted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no trap yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the visits stand in the list beside the chart</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonText</name>
    <message>
        <source>flight hardly begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight about a quarter over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight about half over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight about three quarters over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight nearly over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight %1 to %2 % over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no moths yet</source>
        <translation type="unfinished">pas encore de papillons</translation>
    </message>
    <message>
        <source>flight rising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight near its highest so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight past its highest so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 past trap seasons of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up on %1, after %2: it may have missed the first moths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost on %1, before %2: it missed the last moths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended on %1, before %2: it missed the last moths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was never counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last counted on %1, before %2: the last moths are not in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No band: the protocol does not say when a season is whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No band: nobody noted the day of set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So there is no band: bands are for whole seasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was the trap emptied on %1? Until that is known the higher of the two counts stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer moths on %1 than at the visit before, though it was not emptied: the higher count stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least: the trap failed since it was last emptied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least: trap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no counts yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moth in the whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths in the whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moth, part of the flight only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths, part of the flight only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moth so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>season likely %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too early to say where the season may end (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The likely range comes from %1. It knows nothing of this year’s weather.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands are for whole seasons: none until the flight is over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 moths or more in a whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 moths in a whole season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A heavy catch was estimated: %1 moths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in the total: %1 that nobody has named yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Named samples are in the total.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap was moved on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nights not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emptied uncounted: those nights are lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not emptied: the next count holds these too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted %1, named samples add %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not named yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one count over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1</source>
        <translation type="unfinished">environ %1</translation>
    </message>
    <message>
        <source>%1 of 7 nights counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>derived: shared out by nights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least: the trap failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a question is open</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ServiceWhat</name>
    <message>
        <source>lure changed</source>
        <translation>phéromone remplacée</translation>
    </message>
    <message>
        <source>killing strip changed</source>
        <translation>plaquette insecticide remplacée</translation>
    </message>
    <message>
        <source>trap raised</source>
        <translation>piège relevé</translation>
    </message>
    <message>
        <source>trap moved</source>
        <translation>piège déplacé</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>Settings of this device</source>
        <translation>Réglages de cet appareil</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lumière</translation>
    </message>
    <message>
        <source>as the device</source>
        <translation>comme l’appareil</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>night</source>
        <translation>nuit</translation>
    </message>
    <message>
        <source>Size of type</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>47 moths</source>
        <translation>47 papillons</translation>
    </message>
    <message>
        <source>This is how the screens read.</source>
        <translation>Voici comment se lisent les écrans.</translation>
    </message>
    <message>
        <source>Position from a file</source>
        <translation>Position d’après un fichier</translation>
    </message>
    <message>
        <source>An NMEA log in place of the receiver, for a device that has none. Empty: the receiver.</source>
        <translation>Un journal NMEA à la place du récepteur, pour un appareil qui n’en a pas. Vide&#xa0;: le récepteur.</translation>
    </message>
    <message>
        <source>Use this file</source>
        <translation>Utiliser ce fichier</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Everything kept lies in</source>
        <translation>Tout est conservé dans</translation>
    </message>
    <message>
        <source>English</source>
        <comment>what the language of the screens calls itself</comment>
        <translation>français</translation>
    </message>
</context>
<context>
    <name>SetupOutlook</name>
    <message>
        <source>may be flying already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day of set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place</source>
        <translation>l’emplacement</translation>
    </message>
    <message>
        <source>the lure</source>
        <translation>la phéromone</translation>
    </message>
    <message>
        <source>the killing strip</source>
        <translation>la plaquette insecticide</translation>
    </message>
    <message>
        <source>the height of the entrance</source>
        <translation>la hauteur de l’entrée</translation>
    </message>
    <message>
        <source>First count</source>
        <translation>Premier relevé</translation>
    </message>
    <message>
        <source>First moths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traps come down</source>
        <translation>Retrait des pièges</translation>
    </message>
    <message>
        <source>Traps came down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies outside the season of %2. Is the day right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 on it is late to set up a trap: it will show part of the flight only, and the season gets no band.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traps usually stand by %1. This one may show part of the flight only, and then the season gets no band.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to come: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SetupTrail</name>
    <message>
        <source>Who said yes to a trap here?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does it stand?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is around it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A clean trap with its own tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you open the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then the killing strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the entrance above the canopy?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A last look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which field is it for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conserver</translation>
    </message>
</context>
<context>
    <name>SheetPage</name>
    <message>
        <source>The table of all %1 frames is on the next page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SizeTile</name>
    <message>
        <source>%1, %2: %3. One more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: one less</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SprayedSheet</name>
    <message>
        <source>Sprayed since the last visit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spray can lower the catch. Ask the landowner when you do not know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-entry time on its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>h</source>
        <comment>hours</comment>
        <translation>h</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StakePage</name>
    <message>
        <source>Height of the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Height of the entrance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the crop grows, the trap shall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stay at this height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rise with the crop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StakePicture</name>
    <message>
        <source>cm</source>
        <comment>unit on the measuring rod</comment>
        <translation>cm</translation>
    </message>
</context>
<context>
    <name>Start</name>
    <message>
        <source>A season of traps</source>
        <translation>Une saison de pièges</translation>
    </message>
    <message>
        <source>Two names and you can set up a trap. Everything else is preset and can be changed later.</source>
        <translation>Deux noms et vous pouvez installer un piège. Le reste est préréglé et se change plus tard.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>Programme or region</source>
        <translation>Programme ou région</translation>
    </message>
    <message>
        <source>The group you count for, or your own farm.</source>
        <translation>Le groupe pour lequel vous comptez, ou votre propre ferme.</translation>
    </message>
    <message>
        <source>I am a</source>
        <translation>Je suis</translation>
    </message>
    <message>
        <source>grower</source>
        <translation>producteur</translation>
    </message>
    <message>
        <source>agronomist</source>
        <translation>agronome</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation>coordonnateur</translation>
    </message>
    <message>
        <source>Set the week and districts myself</source>
        <translation>Choisir moi-même la semaine et les districts</translation>
    </message>
    <message>
        <source>Preset: weeks from Monday to Sunday, counted on Monday, bertha armyworm, season %1</source>
        <translation>Préréglé&#xa0;: semaines du lundi au dimanche, relevé le lundi, légionnaire bertha, saison %1</translation>
    </message>
    <message>
        <source>Traps are counted on</source>
        <translation>Les pièges sont relevés le</translation>
    </message>
    <message>
        <source>The reporting week starts on</source>
        <translation>La semaine de rapport commence le</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>dimanche</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>lundi</translation>
    </message>
    <message>
        <source>Districts, separated by commas</source>
        <translation>Districts, séparés par des virgules</translation>
    </message>
    <message>
        <source>Begin the season</source>
        <translation>Commencer la saison</translation>
    </message>
    <message>
        <source>How do you begin?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on my own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for a group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>join by a code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You are its coordinator, and invite the others afterwards. This device is its first main device.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepTrail</name>
    <message>
        <source>Step %1 of %2: %3</source>
        <translation>Étape %1 sur %2&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>StopCard</name>
    <message>
        <source>Touch to hear why.</source>
        <translation>Touchez pour savoir pourquoi.</translation>
    </message>
    <message>
        <source>Its season</source>
        <translation>Sa saison</translation>
    </message>
</context>
<context>
    <name>StopLines</name>
    <message>
        <source>All larvae so far, frame after frame.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>The lure goes in first, so that gloves which held the strip never come near it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap cut open; the killing strip lies on the floor of the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The killing strip, on the floor of the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then take these gloves off. Fresh ones for anything after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strip is not in after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on without the strip</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TabRow</name>
    <message>
        <source>Places</source>
        <translation>Sections</translation>
    </message>
    <message>
        <source>%1, %2 to decide</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TallyKeys</name>
    <message>
        <source>%1: one less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: type the number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Threshold</name>
    <message>
        <source>%1 %2/ac</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2/ha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2/bu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2/t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ha/ac</source>
        <extracomment>hectares in an acre; all digits, for it is exact</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 t/bu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bu/ac for each larva/m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2/ac for each larva/m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 larvae/m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 larvae a frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m² a frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, but at least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>The economic threshold is %1 (about %2), or %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One larva on each square metre costs %1, which is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost of control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost on an acre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a bushel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss to one larva on each square metre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae whose loss equals the cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a dry season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not below the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In one frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price lies below those of the published table (%1): computed, not published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price lies above those of the published table (%1): computed, not published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cost lies below those of the published table (%1): computed, not published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cost lies above those of the published table (%1): computed, not published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No published threshold is so low (%1): whether so few larvae do harm has not been shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No published threshold is so high (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The published table is in other dollars; the formula is the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You called this a dry season: the usual threshold, %1, is divided by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has published a divisor for a dry season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The divisor is your own; the published one is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The formula gives no more than the lowest threshold that holds, so that one stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The frame is your own, %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you call the season very dry, the published divisor of %1 gives %2; that is yours to choose.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThresholdTable</name>
    <message>
        <source>Around your numbers: larvae per m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down: cost in %1. Across: price in %2. ▲ above the threshold, ▽ below, ● too close. Touch a number to take it, or draw the dark one there.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>A new season: %1</source>
        <translation>Une nouvelle saison&#xa0;: %1</translation>
    </message>
    <message>
        <source>The same people, week and protocols. Fields are new, since the crop rotates.</source>
        <translation>Les mêmes personnes, semaine et protocoles. Les champs sont nouveaux, puisque la culture tourne.</translation>
    </message>
    <message>
        <source>No trap yet</source>
        <translation>Aucun piège encore</translation>
    </message>
    <message>
        <source>Set one up, and what is due there stands here each week.</source>
        <translation>Installez-en un&#xa0;: ce qu’il y a à faire s’affichera ici chaque semaine.</translation>
    </message>
    <message>
        <source>A bucket trap</source>
        <translation>Un piège-seau</translation>
    </message>
    <message>
        <source>Later this week</source>
        <translation>Plus tard cette semaine</translation>
    </message>
    <message>
        <source>After that</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>Begin %1</source>
        <translation>Commencer %1</translation>
    </message>
    <message>
        <source>Set up the first trap</source>
        <translation>Installer le premier piège</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>demain</translation>
    </message>
    <message>
        <source>in %1</source>
        <extracomment>&quot;in 11 days&quot;</extracomment>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>Count now</source>
        <translation>Faire le relevé</translation>
    </message>
    <message>
        <source>See to the trap</source>
        <translation>S’occuper du piège</translation>
    </message>
    <message>
        <source>Season of the trap</source>
        <translation>Saison du piège</translation>
    </message>
    <message>
        <source>%1, larvae</source>
        <translation>%1, larves</translation>
    </message>
    <message>
        <source>lent to %1: %2</source>
        <extracomment>a person&apos;s name, then what is due at a trap lent to that person</extracomment>
        <translation>prêté à %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Nothing due today</source>
        <translation>Rien à faire aujourd’hui</translation>
    </message>
    <message>
        <source>One stop today</source>
        <translation>Un arrêt aujourd’hui</translation>
    </message>
    <message>
        <source>Two stops today</source>
        <translation>Deux arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Three stops today</source>
        <translation>Trois arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Four stops today</source>
        <translation>Quatre arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Five stops today</source>
        <translation>Cinq arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Six stops today</source>
        <translation>Six arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Seven stops today</source>
        <translation>Sept arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Eight stops today</source>
        <translation>Huit arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Nine stops today</source>
        <translation>Neuf arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Ten stops today</source>
        <translation>Dix arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>%1 stops today</source>
        <translation>%1 arrêts aujourd’hui</translation>
    </message>
    <message>
        <source>Go on with a half-entered set-up</source>
        <translation>Reprendre une installation commencée</translation>
    </message>
    <message>
        <source>Go on with a half-entered correction</source>
        <translation>Reprendre une correction commencée</translation>
    </message>
    <message>
        <source>Go on with a half-entered visit</source>
        <translation>Reprendre une visite commencée</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>One more stop is in the list of traps.</source>
        <translation>Un autre arrêt est dans la liste des pièges.</translation>
    </message>
    <message>
        <source>%1 more stops are in the list of traps.</source>
        <translation>%1 autres arrêts sont dans la liste des pièges.</translation>
    </message>
    <message>
        <source>every count is in</source>
        <translation>tous les relevés sont faits</translation>
    </message>
    <message>
        <source>one count still to come</source>
        <translation>un relevé encore attendu</translation>
    </message>
    <message>
        <source>%1 counts still to come</source>
        <translation>%1 relevés encore attendus</translation>
    </message>
    <message>
        <source>one visit this season</source>
        <translation>une visite cette saison</translation>
    </message>
    <message>
        <source>%1 visits this season</source>
        <translation>%1 visites cette saison</translation>
    </message>
    <message>
        <source>All on this device: %1.</source>
        <translation>Tout est sur cet appareil&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The day&apos;s round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scout the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only on this phone: one entry of yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only on this phone: %1 entries of yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have entered nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All you entered is handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All you entered is at the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All you entered is handed over or at the hub</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tool</name>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>%1 in a whole season of one trap: %2 (band %3 of %4, %5).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the protocol %1 %2 for the trap type %3. Source: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is sound: %2 changes, all readable and without a gap, and the tables are what they come to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not sound. Keep a copy of it as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file itself is damaged: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes in the log that cannot be read: %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes missing from the log: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tables differ from what the log comes to. Nothing in the log is lost; the tables have to be folded again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented district, with everybody and everything in it, as on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept in %1: %2 traps and %3 visits over %4 seasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>id</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device is the grower&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the next six days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or higher</source>
        <translation type="unfinished">%1 ou plus</translation>
    </message>
    <message>
        <source>Bands are for whole seasons, by the protocol %1 %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season %1, as on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>district</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch</source>
        <translation>capture</translation>
    </message>
    <message>
        <source>of what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>%1. See %2 --help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larvae per m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frames on average</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How patchy the larvae of this pest lie nobody has published. In patchier fields (k = %1):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a threshold of %1 (%2 a frame): count at least %3 frames, expect %4, and stop when all larvae together are about %5 or more away from %2 times the frames. After %6 frames the field is near the threshold and stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>towards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean boots and wheels after an infested field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no stop to make.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A suggestion: %1 along a square grid. No road is known here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A suggestion: %1 in straight lines. Roads are longer, and none is known here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way back to the start is part of the length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due as well, but nobody has noted its place: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of the stops: a suggestion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae/m² at other costs (down) and prices (across)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>* not within the published table: computed, not published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss comes from trials of %1 to %2; varieties in them: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the protocol %1 %2. Source: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often walks by this rule err where larvae are as patchy as assumed (k = %1):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept aside: a change of %1 %2 (%3), %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed since it was said to stand: %1 %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The device %1 has ended. Its %2 changes that arrived here count; what it writes later is kept aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invitation for %1, good until %2. It is shown only now:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange once before it is used, so that it lies where it will be looked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records that came along: %1. Photographs: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records that were here already, and stay as they are: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs that are missing beside the old store: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sites that another member kept, and that are yours now: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The programme has no district %1. Ask the coordinator to let it in, or to add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The programme has no season %1 yet. Your records of it lie ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The programme does not use %1 in each of those seasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You are in %1. The store is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a file with exchange --write and carry it back, so that the others know you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ended after change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>founding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in by its invitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stream</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invitation for %1 is open until %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has begun, in %2. This device founded it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is at the hub %2 now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is settled. The others see it after an exchange.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bundles handed over: %1. Bundles that came in: %2, with %3 changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs handed over: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs that came in: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Devices that were let in: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bundles that wait for an earlier one: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that are not finished copying: %1. Exchange again later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that were refused and kept aside beside the store: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One device wrote two different histories, as a copied store does. Both are kept and used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a trap not known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No record of this season gets a flag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flags: %1. A flag asks to look; it changes no record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published for the first time. The week is frozen from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it was published: issue %1. Traps that have changed since: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published again as issue %1. Traps whose change still waits: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The counts of this week are not all due yet, and a published week is frozen. Publish it when it is over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No new issue: counts have changed at %1 traps, and nowhere at those of five farms or more. A new issue would show whose they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>no district</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted in full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>median</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>median of the week to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 sur %2</translation>
    </message>
    <message>
        <source>Between the traps nothing is drawn: %1 traps with a place and a full count are fewer than 20.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the traps nothing is drawn: all caught the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the traps nothing is drawn: what a trap catches is told by its neighbours only %1 % better than by the mean of all; 5 % is the least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the traps a surface may be drawn: neighbours tell what a trap catches %1 % better than the mean of all. Larvae vary between neighbouring fields all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the desk: it names traps. Publish none of it as it stands.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Trap</name>
    <message>
        <source>trap without a tag</source>
        <translation>piège sans étiquette</translation>
    </message>
</context>
<context>
    <name>TrapPage</name>
    <message>
        <source>Tag, as written on the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It catches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of a pair? Both counts are kept, never summed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap is clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old catch, old lure and litter are out of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write on it, in pencil or paint</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrapSeason</name>
    <message>
        <source>Part of the flight only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the season as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No counts yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pair of traps: two counts, never added together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Life of this trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raised, lure and strip, moved, lent, ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count now</source>
        <translation>Faire le relevé</translation>
    </message>
    <message>
        <source>Take the trap down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scout this field for larvae</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrapSetup</name>
    <message>
        <source>Back to today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, keep it so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at it again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrapState</name>
    <message>
        <source>fine</source>
        <translation>en bon état</translation>
    </message>
    <message>
        <source>fallen</source>
        <translation>tombé</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>inondé</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>endommagé</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>disparu</translation>
    </message>
    <message>
        <source>lure gone</source>
        <translation>phéromone absente</translation>
    </message>
</context>
<context>
    <name>Traps</name>
    <message>
        <source>Traps</source>
        <translation>Pièges</translation>
    </message>
    <message>
        <source>Traps of %1</source>
        <translation>Pièges de %1</translation>
    </message>
    <message>
        <source>Find a trap</source>
        <translation>Trouver un piège</translation>
    </message>
    <message>
        <source>Sorted by</source>
        <translation>Trié par</translation>
    </message>
    <message>
        <source>name</source>
        <extracomment>what a list of traps is sorted by</extracomment>
        <translation>nom</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>plus proche</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>capture</translation>
    </message>
    <message>
        <source>No trap yet</source>
        <translation>Aucun piège encore</translation>
    </message>
    <message>
        <source>Each trap stands here with its catch so far.</source>
        <translation>Chaque piège figure ici avec sa capture jusqu’ici.</translation>
    </message>
    <message>
        <source>No trap of that name</source>
        <translation>Aucun piège de ce nom</translation>
    </message>
    <message>
        <source>Sites, fields and tags are searched.</source>
        <translation>La recherche porte sur les sites, les champs et les étiquettes.</translation>
    </message>
    <message>
        <source>Set up a trap</source>
        <translation>Installer un piège</translation>
    </message>
    <message>
        <source>%1 %2 in all</source>
        <extracomment>moths of a season that is over, respectively that goes on</extracomment>
        <translation>%1 %2 en tout</translation>
    </message>
    <message>
        <source>%1 %2 so far</source>
        <translation>%1 %2 jusqu’ici</translation>
    </message>
    <message>
        <source>counted %1</source>
        <translation>relevé le %1</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation>aucun relevé encore</translation>
    </message>
    <message>
        <source>set up %1</source>
        <translation>installé le %1</translation>
    </message>
    <message>
        <source>ended %1</source>
        <translation>retiré le %1</translation>
    </message>
    <message>
        <source>lent to %1</source>
        <translation>prêté à %1</translation>
    </message>
    <message>
        <source>%1 since it was emptied</source>
        <translation>%1 depuis le dernier vidage</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminés</translation>
    </message>
</context>
<context>
    <name>Typing</name>
    <message>
        <source>Type in counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · typed by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How they were reported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were the traps emptied?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter keeps a count and goes to the next trap; arrows go up and down, Tab to who reported. Day and way stay as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everybody has reported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For this week no trap waits for a count.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TypingEntry</name>
    <message>
        <source>Moths at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who reported for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who reported</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ValueWords</name>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 universal time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1°</source>
        <translation type="unfinished">%1°</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation type="unfinished">%1 m²</translation>
    </message>
</context>
<context>
    <name>VisitCount</name>
    <message>
        <source>%1 counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tap anywhere here, or a key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moth guide: the marks to look for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other: could not count, a heavy catch, start over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip the catch into a tray, standing upwind. Gloves off before you touch the phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: look at the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: look it over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero is a count: the trap worked, and the pest was not in it. It is not the same as a trap that could not be counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, none: keep it as zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on counting</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitDone</name>
    <message>
        <source>It is right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number on the bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag the moths nobody is sure of, write this number on the bag in pencil, and freeze it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the correction</source>
        <translation>Conserver la correction</translation>
    </message>
    <message>
        <source>Keep this visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is right: keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitFrame</name>
    <message>
        <source>Count</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>Trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitKept</name>
    <message>
        <source>See the season of this trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See its samples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something is wrong: correct it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitLure</name>
    <message>
        <source>Are lure and strip there, and no moth alive?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the lure there?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No, or I changed something</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I emptied the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sprayed since the last visit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap opened: the lure in its basket under the lid, the killing strip on the floor of the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: look it over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: lure and strip there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: the lure is there</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitOtherSheet</name>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A heavy catch: count a part of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start over: back to what is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start this visit over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to counting</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitPhoto</name>
    <message>
        <source>The photograph of this visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the photograph out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photograph of this visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitTrap</name>
    <message>
        <source>Flowering is over: the crop grows no taller, so heights are not asked any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canopy now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was %1. Change it, or say that it still is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Entrance of the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowering is over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then heights are not asked any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How was the trap?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: lure and strip</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitWords</name>
    <message>
        <source>%1 to the north</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the north-east</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the east</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the south-east</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the south</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the south-west</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the west</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the north-west</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jour|%1 jours</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another visit to this trap lies only %1 away, and it emptied the trap. Are these other moths?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another visit to this trap lies only %1 away, and it did not empty the trap. Does this count hold those moths as well?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set up today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>already emptied today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set up %1 ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last emptied %1 ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One count over %1: the total stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight likely over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight not over yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day lies %1 ahead. Is it the day of the visit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day lies %1 before the trap was set up. Is it the day of the visit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day lies %1 after the trap was taken down. Is it the day of the visit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap was last emptied %1 ago by the records. Did nobody empty it since?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is far above the largest other catch of this trap, %2. Is it right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in one bucket is very many. Is it right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1, likely %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole catch was counted: this is no estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range assumes that moths clump twice as much as perfect mixing would leave them. Three parts or more show how much they really do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range comes from how much the parts differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The re-entry time of the label is over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay out until the end of %1: the day of spraying and the label&apos;s %2 h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay out until %1, %2: the day of spraying and the label&apos;s %3 h.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Walk</name>
    <message>
        <source>no frame yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few frames for a range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>probably below %1 per m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few frames: %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again in a few days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About one more frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 more frames.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 per m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · your threshold %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what control costs, and the lines say when to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stop rule can be drawn for this threshold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below your threshold: you may stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above your threshold: you may stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too close to call. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 paces</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WalkHow</name>
    <message>
        <source>How to look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count what lives and feeds by its size; the sick, apart. Take the next frame wherever the steps end, not where it looks bad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the first frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where, when and how</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WalkPaper</name>
    <message>
        <source>Larvae so far, by stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above your threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep looking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stops</source>
        <extracomment>what the lower axis counts</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WalkSheet</name>
    <message>
        <source>Folder for the PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One page, called %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on this device takes it. Copy the text instead, and paste it where you write.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ÷ %2 ÷ %3 m² a frame = %4 larvae/m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After %1 stops: below at %2 larvae in all or fewer, above at %3 or more. Not before %4 stops; still between after %5, it stays open.</source>
        <extracomment>lists of the same length: stops, larvae, larvae; then the fewest and the most stops</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a threshold there is no line to stop at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stop rule can be drawn for this threshold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Economic threshold, step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not worked out: cost and price have not been said.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost and price are those of the walk before: nothing was kept for this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing on %1: %2</source>
        <extracomment>&quot;Timing on 14 Jul: too early&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was decided yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; decided on %2</source>
        <extracomment>what was decided, and the day</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished">%1.</translation>
    </message>
    <message>
        <source>A good day to look again: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources</source>
        <translation type="unfinished">Sources</translation>
    </message>
    <message>
        <source>Worked out for %1 by protocol %2, version %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walk began under version %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scouting walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented: made up for showing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what control costs and what the harvest brings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished">Précautions</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a name and its value</extracomment>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>pods damaged, of those looked at</extracomment>
        <translation type="unfinished">%1 sur %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: over %2 mm</source>
        <extracomment>a size class and its edges: &quot;Small: under 13 mm&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: under %2 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to %3 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">non dit</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>a crop stage and the scale it is told on</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation type="unfinished">%1 m²</translation>
    </message>
    <message>
        <source>%1 m² (%2 × %2 cm)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frames</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No frame was searched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame</source>
        <translation type="unfinished">Cadre</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae</source>
        <extracomment>heads of columns: larvae of all sizes, sick ones, pods damaged</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae: alive and feeding, all sizes. Sick: parasitised or diseased, not among them. Pods: damaged, of those looked at. A dash: not looked at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the frames were</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No frame knows its place, so there is no sketch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not on the sketch, for they do not know their place: frame %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished">inconnu</translation>
    </message>
    <message>
        <source>Pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crop stage</source>
        <translation type="unfinished">Stade de la culture</translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very dry, noted on the walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WalkStart</name>
    <message>
        <source>Scout a field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crop stage, by the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin: the first frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin without a crop stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A very dry season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note. Whether it lowers your threshold is asked when you decide.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Way</name>
    <message>
        <source>north</source>
        <extracomment>one of the eight points of the compass, as in &quot;3.4 km to the north&quot;</extracomment>
        <translation>nord</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>nord-est</translation>
    </message>
    <message>
        <source>east</source>
        <translation>est</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sud-est</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sud</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>sud-ouest</translation>
    </message>
    <message>
        <source>west</source>
        <translation>ouest</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>nord-ouest</translation>
    </message>
    <message>
        <source>You are %1 away.</source>
        <translation>Vous êtes à %1.</translation>
    </message>
    <message>
        <source>%1 to the %2.</source>
        <extracomment>a distance and a point of the compass</extracomment>
        <translation>%1, direction %2.</translation>
    </message>
</context>
<context>
    <name>WhichTrap</name>
    <message>
        <source>Which trap is it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count a trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You stand %1. Nearest first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no position yet: choose by name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These traps stand too close together for the position to tell. Look at the tag on the trap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trap is out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up a trap first; then it can be counted here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WithdrawSheet</name>
    <message>
        <source>Withdraw it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For example: typed at the wrong trap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Year</name>
    <message>
        <source>Season %1</source>
        <translation>Saison %1</translation>
    </message>
    <message>
        <source>This season is not begun yet. People, week and protocols come along; fields are new.</source>
        <translation>Cette saison n’est pas encore commencée. Personnes, semaine et protocoles suivent&#xa0;; les champs sont nouveaux.</translation>
    </message>
    <message>
        <source>Change programme, week or name</source>
        <translation>Modifier le programme, la semaine ou le nom</translation>
    </message>
    <message>
        <source>Protocols in use</source>
        <translation>Protocoles utilisés</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Calendar file</source>
        <translation>Fichier de calendrier</translation>
    </message>
    <message>
        <source>Count days and what else is to come</source>
        <translation>Jours de relevé et autres échéances</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Échantillons</translation>
    </message>
    <message>
        <source>Samples that are to be named</source>
        <translation>Échantillons à identifier</translation>
    </message>
    <message>
        <source>Settings of this device</source>
        <translation>Réglages de cet appareil</translation>
    </message>
    <message>
        <source>Light, size of type, position</source>
        <translation>Lumière, taille du texte, position</translation>
    </message>
    <message>
        <source>Begin %1 with the same people</source>
        <translation>Commencer %1 avec les mêmes personnes</translation>
    </message>
    <message>
        <source>Begin %1?</source>
        <translation>Commencer %1&#xa0;?</translation>
    </message>
    <message>
        <source>Week, districts, protocols and people stay as they are. Traps do not come along: next year&apos;s fields are others.</source>
        <translation>Semaine, districts, protocoles et personnes restent. Les pièges ne suivent pas&#xa0;: les champs de l’an prochain sont autres.</translation>
    </message>
    <message>
        <source>Begin %1</source>
        <translation>Commencer %1</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>This week’s desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who has reported, typing counts in, and what to look at</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YearExchange</name>
    <message>
        <source>With others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By a folder, one file or a hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two values for the same, proposals, and what was kept aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Members and devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who takes part, and inviting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join a programme by a code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you kept alone can come along</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>YesPage</name>
    <message>
        <source>Who said yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is my own land</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gate, dog, way in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a yes the trap can be set up, but nobody can see later that the landowner agreed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::App</name>
    <message>
        <source>You take part in “%1” now, as %2: %3.</source>
        <comment>programme, name, role</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::CalendarViewModel</name>
    <message>
        <source>One entry, in %1.</source>
        <translation>Une entrée, dans %1.</translation>
    </message>
    <message>
        <source>%1 entries, in %2.</source>
        <translation>%1 entrées, dans %2.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::CarriedViewModel</name>
    <message>
        <source>Looking into the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is of another programme than the one on this device. It is not taken in. To join that programme, choose the file under “Join by a code”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file stops before its end. What is whole can be taken in; ask for it again for the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One part of it would be refused and kept aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n parts of it would be refused and kept aside.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Taking the file in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::CorrectionEntries</name>
    <message>
        <source>not said</source>
        <translation>non dit</translation>
    </message>
</context>
<context>
    <name>duskrow::app::CorrectionViewModel</name>
    <message>
        <source>Correct the %1</source>
        <translation>Corriger&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::DecisionViewModel</name>
    <message>
        <source>Say what control costs and what the harvest brings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Protocol %1, version %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You noted a very dry season on the walk. Your threshold is that of a usual one.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::DeskViewModel</name>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trap that is known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::ExchangeViewModel</name>
    <message>
        <source>No exchange yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for one entry from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Waiting for %n entries from %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Two sets of entries from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was copied or restored. Everything is kept; it goes on under a new number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a way: a folder that others can open too, a hub, or one file to hand on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is only on this phone goes on its way with the next exchange.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything entered here has left this phone at least once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One thing was kept aside, with its reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n things were kept aside, each with its reason</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Writing a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped: the file is not whole, leave it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1. Whoever has it can read all of it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::FrameViewModel</name>
    <message>
        <source>Frame %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · frame %2</source>
        <extracomment>a field&apos;s name, then the number of the frame</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m², searched to the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1&#xa0;: %2 {1,?}</translation>
    </message>
    <message>
        <source>Walk at least %1 between stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the nearest stop: walk on to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the nearest stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this frame, walk on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is early: many larvae are up on the plants, feeding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is evening: many larvae are up on the plants, feeding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is day: look on the ground, under litter and clods and in cracks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larvae so far, by stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above</source>
        <comment>the threshold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep looking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below</source>
        <comment>the threshold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · dry season</source>
        <extracomment>the frame, then a note of the walk</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::HeavyCatchViewModel</name>
    <message>
        <source>g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::HistoryViewModel</name>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <comment>day and time of a change</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lent to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>field and value</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <extracomment>field, value before, value after</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody not known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let it stand again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrew it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its visits go out of every list and sum with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its traps keep standing on their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its moths go out of the total. It stays listed, and you can let it stand again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays in the history, and you can let it stand again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decision of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its frames and its decision go out of every list with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its larvae go out of the estimate. It stays in the history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was withdrawn by somebody who had not seen a later entry, so it stands again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not counted. %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::InviteViewModel</name>
    <message>
        <source>first device</source>
        <comment>what the founding device is called</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no hub: give the shared folder or a carried file along with the code.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub is in the picture and in the text. Over the telephone, say its address too: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invitation as a QR picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same as the code and the text below it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub knows the code: it can be used now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code lies in the shared folder: it can be used there now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code is on its way to where the other looks for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody can use the code yet: it is only on this phone, until an exchange has gone through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join “%1” in Duskrow with the code %2, good once until %3. In the app choose “Join by a code” and paste this: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invitation</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::JoinViewModel</name>
    <message>
        <source>1 field</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n traps</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n visits</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n walks</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One record came along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n records came along.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>One photograph was not there any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n photographs were not there any more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The season %1 is not begun here; its records lie ready for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not trapped in this programme; its records came along all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joining</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::LarvaeViewModel</name>
    <message>
        <source>below the threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above the threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 per m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neighbouring fields differ: each field is scouted by itself. A trap catch never decides a spray.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::LifeViewModel</name>
    <message>
        <source>Life of a trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdrawn: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended on %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lent to %1 until %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on fresh gloves afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entrance %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canopy %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canopy not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has measured the canopy here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canopy last measured on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 The crop stands at or over the entrance: set it higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 At its last pace it reaches this height about %2: an estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody noted where it stood before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from where it stood</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::MemberViewModel</name>
    <message>
        <source>Device without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 entry is here</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n entries are here</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>the last of %1</source>
        <comment>day and time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Main device of the programme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered by its code, not confirmed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ended after entry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>works there too</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::MembersViewModel</name>
    <message>
        <source>this device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no device yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 device</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n devices</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>last entry %1</source>
        <comment>day and time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 field</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>until %1</source>
        <comment>last day in the programme</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the code was good until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the code is good until %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::PlaceViewModel</name>
    <message>
        <source>one fix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fixes averaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1&#xa0;: %2 {1,?}</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>saisi</translation>
    </message>
    <message>
        <source>%1 fixes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::ProtocolViewModel</name>
    <message>
        <source>%1 · protocol %2</source>
        <translation>%1 · protocole %2</translation>
    </message>
</context>
<context>
    <name>duskrow::app::RoundBackBy</name>
    <message>
        <source>That time has gone by today.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::RoundFile</name>
    <message>
        <source>The stops are in %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::RoundViewModel</name>
    <message>
        <source>%1. %2</source>
        <extracomment>the place of a stop in the round, then its name</extracomment>
        <translation type="unfinished">%1&#xa0;: %2 {1.?}</translation>
    </message>
    <message>
        <source>Nobody noted where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day&apos;s round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The round is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own order, kept for today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By name: there are too many stops to order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By name: without a position nobody knows which stop is near.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shortest way found from here, infested fields last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shortest way found from here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No field of this round is known to be infested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One field of this round is infested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fields of this round are infested.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SampleList</name>
    <message>
        <source>%1 of %2 the pest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SamplesViewModel</name>
    <message>
        <source>to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SeasonViewModel</name>
    <message>
        <source>Day not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This one, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season of a trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>season %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ended %1</source>
        <translation>retiré le %1</translation>
    </message>
    <message numerus="yes">
        <source>Look for larvae about %n days after the peak.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Highest catch about %1: look for larvae from about %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No band: nobody has published bands for this type of trap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or higher</source>
        <translation type="unfinished">%1 ou plus</translation>
    </message>
    <message>
        <source>By protocol version %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By protocol version %1; the trap was set up by version %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupAround</name>
    <message>
        <source>Trap %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished">%1.</translation>
    </message>
    <message>
        <source>%1: %2 is too close.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is too far.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupSite</name>
    <message>
        <source>no trap stands here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No field of this season is called that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more: type a part of the name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the field, or enter a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who said yes? The way in is kept with the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day lies ahead. A yes was said today or before.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupStake</name>
    <message>
        <source>entrance %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canopy %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap on its stake over the crop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop reaches the entrance already. Set the trap higher, so that moths find it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop hides the entrance. Set the trap higher, so that moths find it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the last heights here the crop reaches the entrance about %1. This is an estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the crop will reach the entrance is not known yet: the height at the next visit tells how fast it grows.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupTrap</name>
    <message>
        <source>No, it stands alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with trap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trap %1 stands already at %2. Two traps of one tag are easily mixed up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
%2
trap %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This lure expired %1 ago. It may draw fewer moths: use a fresh one if you can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jour|%1 jours</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupViewModel</name>
    <message>
        <source>The season of %1 has not begun yet. Begin it first, then set up its traps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device does not know yet whose it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of set-up lies ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has not come yet. Counts start from the day of set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another year?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up a trap</source>
        <translation>Installer un piège</translation>
    </message>
    <message>
        <source>%1 · trap %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: the landowner’s yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on without the yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: what stands around</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use these coordinates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use this place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on without a place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: the trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: the lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: the stake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lure is in its basket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: the killing strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strip is in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on without the strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: a last look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See its season</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SheetViewModel</name>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet is in %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::SizeTiles</name>
    <message>
        <source>over %1&#xa0;mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1&#xa0;mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2&#xa0;mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::ThresholdGrid</name>
    <message>
        <source>the walk lies below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the walk lies above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 at %3 %4: %5 larvae per m²</source>
        <extracomment>cost, its unit, price, its unit, larvae</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::TypingViewModel</name>
    <message>
        <source>This day is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count of this day is for the week %1. Go to that week to type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say who reported it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: %1 on %2, %3, from %4</source>
        <extracomment>&quot;47 moths&quot;, a day, &quot;by phone&quot;, a person</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitCountViewModel</name>
    <message>
        <source>moths of other kinds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moths nobody is sure of: bag them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bees in the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no %1 moth counted yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 moths in the bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sample, numbered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when the visit is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>so far %1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more moth of another kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more moth nobody is sure of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more bee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more %1 moth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated %1: likely %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None caught?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No %1 moth among them?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1. No number is kept for these nights, and the season is “at least”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number is kept: %1. That is neither zero nor a missed week.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitDoneViewModel</name>
    <message>
        <source>Could not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No moths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other kinds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer than a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canopy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entrance set to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New lure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Killing strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moths alive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes: the strip is spent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not emptied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sprayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another bag of this trap bears this number already.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitLureViewModel</name>
    <message>
        <source>This lure expired on %1. Use a fresh one if you have it; the record keeps what was put in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next count begins from nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These moths stay in the bucket: the next count holds them as well, and they are not added twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sprayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tap if it was, or if you know that it was not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sprayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sprayed with %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitTrapViewModel</name>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entrance %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canopy %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canopy was %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No height is known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jour|%1 jours</translation>
    </message>
    <message>
        <source>It has not grown in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands %1 lower than %2 before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It grew %1 in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop stands at the entrance: raise it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The crop stands at the entrance; this trap keeps its height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At that pace it reaches the entrance about %1 (estimate): raise it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At that pace it reaches the entrance about %1 (estimate).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Little air is left over the crop: raise it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raised by %1, and logged so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I raised it to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as high as the stake goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap may have lost moths: the season so far is “at least”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trap may have lost moths, so this count is “at least”, and the moths a night leave these nights out.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitViewModel</name>
    <message>
        <source>Correcting the visit of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correcting a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: corrected on this phone. What stood there before is in its history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: kept on this phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write %1 on the bag in pencil, then freeze it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last count and take down: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next count: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::WalkStartViewModel</name>
    <message>
        <source>Another field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more fit: type a part of the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Early: most larvae are still small or not hatched. Look again near the end of flowering.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late: the seed is nearly safe, and a label may leave no time before cutting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the time to look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The frame: %1 m², %2 × %2 cm inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A walk in this field was begun on %1 and is not finished.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>duskrow::app::YearViewModel</name>
    <message>
        <source>The week begins on</source>
        <translation>La semaine commence le</translation>
    </message>
    <message>
        <source>Traps are counted on</source>
        <translation>Relevé des pièges le</translation>
    </message>
    <message>
        <source>Grace before and after</source>
        <translation>Tolérance avant et après</translation>
    </message>
    <message>
        <source>Report by</source>
        <translation>À transmettre d’ici</translation>
    </message>
    <message>
        <source>Districts</source>
        <translation>Districts</translation>
    </message>
    <message>
        <source>protocol %1 · cautions, figures, sources</source>
        <translation>protocole %1 · précautions, chiffres, sources</translation>
    </message>
    <message>
        <source>you</source>
        <extracomment>after one&apos;s own name and role in the list of people</extracomment>
        <translation>vous</translation>
    </message>
    <message>
        <source>%1, you</source>
        <translation>%1, vous</translation>
    </message>
    <message>
        <source>%1 is ready: it opens on 1 January.</source>
        <translation>%1 est prête&#xa0;: elle s’ouvre le 1er janvier.</translation>
    </message>
</context>
</TS>
