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
        <translation>%1 larve</translation>
    </message>
    <message numerus="yes">
        <source>%1 larvae</source>
        <translation>
            <numerusform>%1 larve</numerusform>
            <numerusform>%1 larves</numerusform>
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
    <name>Answered</name>
    <message>
        <source>it is right</source>
        <translation>c’est juste</translation>
    </message>
    <message>
        <source>it was corrected</source>
        <translation>c’est corrigé</translation>
    </message>
</context>
<context>
    <name>AroundPage</name>
    <message>
        <source>In from the field edge, by paces</source>
        <translation>Distance au bord du champ, au pas</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>To the nearest farmyard</source>
        <translation>Jusqu’à la cour de ferme la plus proche</translation>
    </message>
    <message>
        <source>To the nearest strong light</source>
        <translation>Jusqu’à la lumière vive la plus proche</translation>
    </message>
    <message>
        <source>Nearest trap of this season</source>
        <translation>Piège le plus proche cette saison</translation>
    </message>
    <message>
        <source>Not quite as the protocol asks</source>
        <translation>Pas tout à fait ce que demande le protocole</translation>
    </message>
    <message>
        <source>You can set the trap up here all the same.</source>
        <translation>Vous pouvez quand même installer le piège ici.</translation>
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
        <translation>Ravageur</translation>
    </message>
    <message>
        <source>Not it</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation>Incertain</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Abeilles</translation>
    </message>
    <message>
        <source>What is being counted</source>
        <translation>Ce qui est compté</translation>
    </message>
</context>
<context>
    <name>Bulletin</name>
    <message>
        <source>about %1</source>
        <translation>environ %1</translation>
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
        <source>held back, so that no farm can be told from it</source>
        <translation>retenu, pour qu’aucune ferme ne puisse être reconnue</translation>
    </message>
    <message>
        <source>District by district: traps counted in full this week</source>
        <translation>District par district&#xa0;: pièges relevés en entier cette semaine</translation>
    </message>
    <message>
        <source>held back, or no trap</source>
        <translation>retenu, ou aucun piège</translation>
    </message>
    <message>
        <source>Figures are medians and bands, made round. Of the highest trap of an area only its band is told. No single trap’s catch, no name and no place of a trap is in any file.</source>
        <translation>Les chiffres sont des médianes et des classes, arrondies. De la plus forte capture d’une zone, seule la classe est dite. Aucune capture d’un seul piège, aucun nom et aucun emplacement de piège ne figurent dans un fichier.</translation>
    </message>
</context>
<context>
    <name>BulletinDraft</name>
    <message>
        <source>Look for larvae in the field, with a frame.</source>
        <translation>Cherchez les larves dans le champ, avec un cadre.</translation>
    </message>
    <message>
        <source>Look for larvae in the field, with a frame, from about %1 after the highest catches.</source>
        <translation>Cherchez les larves dans le champ, avec un cadre, à partir d’environ %1 après les plus fortes captures.</translation>
    </message>
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
        <source>So far this season the median trap has caught %1.</source>
        <translation>Depuis le début de la saison, le piège médian&#xa0;: %1.</translation>
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
        <source>The %1 traps counted in full this week, by the band reached so far: %2.</source>
        <translation>Les %1 pièges relevés en entier cette semaine, par classe atteinte jusqu’ici&#xa0;: %2.</translation>
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
        <source>Districts whose figures are held back may stand higher.</source>
        <translation>Les districts dont les chiffres sont retenus peuvent être plus hauts.</translation>
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
        <source>%1 of %2 traps counted; the median trap caught %3 this week and %4 so far.</source>
        <translation>%1 pièges sur %2 relevés&#xa0;; piège médian&#xa0;: %3 cette semaine et %4 jusqu’ici.</translation>
    </message>
    <message>
        <source>none</source>
        <comment>moths</comment>
        <translation>aucune capture</translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>moths</comment>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>What to do now</source>
        <translation>Que faire maintenant</translation>
    </message>
    <message>
        <source>Fewer than 5 farms reported this week; no figures are given.</source>
        <translation>Moins de 5 fermes ont transmis des relevés cette semaine ; aucun chiffre n’est donné.</translation>
    </message>
</context>
<context>
    <name>BulletinPage</name>
    <message>
        <source>Districts that have no room here: %1. The web page has them.</source>
        <translation>Districts sans place ici&#xa0;: %1. Ils sont sur la page Web.</translation>
    </message>
    <message>
        <source>–: held back, so that no farm can be told from it.</source>
        <translation>–&#xa0;: retenu, pour qu’aucune ferme ne puisse être reconnue.</translation>
    </message>
</context>
<context>
    <name>CalendarCard</name>
    <message>
        <source>Calendar of pest and crop</source>
        <translation>Calendrier du ravageur et de la culture</translation>
    </message>
    <message>
        <source>Flight, scouting, larvae and harvest: when, and how sure</source>
        <translation>Vol, dépistage, larves et récolte&#xa0;: quand, et avec quelle certitude</translation>
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
        <translation>nouvelle saisie&#xa0;: tout est déjà ici</translation>
    </message>
    <message>
        <source>new entry</source>
        <translation>nouvelle saisie</translation>
    </message>
    <message>
        <source>new entries</source>
        <translation>nouvelles saisies</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Intégrer</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
</context>
<context>
    <name>CatchPartCard</name>
    <message>
        <source>Part %1</source>
        <translation>Partie %1</translation>
    </message>
    <message>
        <source>Amount of this part</source>
        <translation>Quantité de cette partie</translation>
    </message>
    <message>
        <source>Leave this part out</source>
        <translation>Écarter cette partie</translation>
    </message>
    <message>
        <source>The pest’s %1 in it</source>
        <translation>Ravageur&#xa0;: nombre de %1</translation>
    </message>
</context>
<context>
    <name>CooperatorRow</name>
    <message>
        <source>In %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation>Continue</translation>
    </message>
    <message>
        <source>Does not</source>
        <translation>Arrête</translation>
    </message>
    <message>
        <source>Has not said</source>
        <translation>Sans réponse</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copié</translation>
    </message>
    <message>
        <source>Copy the thanks</source>
        <translation>Copier le remerciement</translation>
    </message>
    <message>
        <source>E-mail them</source>
        <translation>Écrire un courriel</translation>
    </message>
    <message>
        <source>Nothing on this device takes it. Copy the text instead, and paste it where you write.</source>
        <translation>Rien sur cet appareil n’accepte l’envoi. Copiez plutôt le texte et collez-le là où vous écrivez.</translation>
    </message>
</context>
<context>
    <name>Correction</name>
    <message>
        <source>What stood here before stays in the history.</source>
        <translation>Ce qui était inscrit avant reste dans l’historique.</translation>
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
        <translation>Relevé impossible</translation>
    </message>
    <message>
        <source>Count after all</source>
        <translation>Relever quand même</translation>
    </message>
</context>
<context>
    <name>CouldNotCountSheet</name>
    <message>
        <source>Could not count</source>
        <translation>Relevé impossible</translation>
    </message>
    <message>
        <source>Why could it not be counted?</source>
        <translation>Pourquoi le relevé était-il impossible&#xa0;?</translation>
    </message>
    <message>
        <source>The visit is kept without a number. That is neither zero nor a missed week.</source>
        <translation>La visite est conservée sans nombre. Ce n’est ni un zéro ni une semaine manquée.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Go back to counting</source>
        <translation>Revenir au relevé</translation>
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
        <translation>Larves comparées à votre seuil</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Afficher</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Argent</translation>
    </message>
    <message>
        <source>Timing</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Calcul</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation>Conserver</translation>
    </message>
    <message>
        <source>Lower it for a dry season</source>
        <translation>L’abaisser pour une saison sèche</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>La fiche</translation>
    </message>
</context>
<context>
    <name>DecideMoney</name>
    <message>
        <source>Control costs, all together</source>
        <translation>Coût du traitement, en tout</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Application</source>
        <translation>Application</translation>
    </message>
    <message>
        <source>Crop lost in the wheel tracks</source>
        <translation>Culture perdue dans les traces de roues</translation>
    </message>
    <message>
        <source>In parts: product, application, wheel tracks</source>
        <translation>En détail&#xa0;: produit, application, traces de roues</translation>
    </message>
    <message>
        <source>Cost in</source>
        <translation>Coût en</translation>
    </message>
    <message>
        <source>The harvest brings</source>
        <translation>La récolte rapporte</translation>
    </message>
    <message>
        <source>Price in</source>
        <translation>Prix en</translation>
    </message>
    <message>
        <source>A very dry season</source>
        <translation>Saison très sèche</translation>
    </message>
    <message>
        <source>Threshold divided by</source>
        <translation>Seuil divisé par</translation>
    </message>
    <message>
        <source>Your own judgement; the published number is preset.</source>
        <translation>À votre jugement&#xa0;; le nombre publié est préréglé.</translation>
    </message>
    <message>
        <source>About this number</source>
        <translation>À propos de ce nombre</translation>
    </message>
</context>
<context>
    <name>DecideTiming</name>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Days before harvest, from the label</source>
        <translation>Jours avant récolte, selon l’étiquette</translation>
    </message>
    <message>
        <source>They count to cutting: swathing or straight cutting.</source>
        <translation>Ils se comptent jusqu’à la coupe&#xa0;: andainage ou coupe directe.</translation>
    </message>
    <message>
        <source>Cutting planned on</source>
        <translation>Coupe prévue le</translation>
    </message>
</context>
<context>
    <name>DecideWhy</name>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation>Ce qui changerait la décision</translation>
    </message>
    <message>
        <source>The larvae</source>
        <translation>Les larves</translation>
    </message>
    <message>
        <source>Search more frames in this field</source>
        <translation>Examiner plus de cadres dans ce champ</translation>
    </message>
    <message>
        <source>What you decided</source>
        <translation>Votre décision</translation>
    </message>
    <message>
        <source>Leave it alone</source>
        <translation>Ne rien faire</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Réexaminer</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Traiter</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Timing: %1.</source>
        <translation>Moment&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>DecideWorking</name>
    <message>
        <source>The threshold, step by step</source>
        <translation>Le seuil, étape par étape</translation>
    </message>
    <message>
        <source>How often the stop rule errs</source>
        <translation>Fréquence d’erreur de la règle d’arrêt</translation>
    </message>
    <message>
        <source>How many frames, and the textbook</source>
        <translation>Nombre de cadres et formule des manuels</translation>
    </message>
    <message>
        <source>Where the loss per larva comes from</source>
        <translation>D’où vient la perte par larve</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
</context>
<context>
    <name>Decided</name>
    <message>
        <source>control the larvae</source>
        <translation>traiter contre les larves</translation>
    </message>
    <message>
        <source>leave the field alone</source>
        <translation>ne rien faire dans ce champ</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>réexaminer</translation>
    </message>
</context>
<context>
    <name>Decision</name>
    <message>
        <source>one more frame</source>
        <translation>un cadre de plus</translation>
    </message>
    <message>
        <source>%1 more frames</source>
        <translation>%1 cadres de plus</translation>
    </message>
    <message>
        <source>The crop is cut already.</source>
        <translation>La culture est déjà coupée.</translation>
    </message>
    <message>
        <source>Cutting is %1 away, but the label asks for %2.</source>
        <translation>La coupe est dans %1, mais l’étiquette demande %2.</translation>
    </message>
    <message>
        <source>Below the threshold</source>
        <translation>Sous le seuil</translation>
    </message>
    <message>
        <source>Above the threshold</source>
        <translation>Au-dessus du seuil</translation>
    </message>
    <message>
        <source>Too close to call</source>
        <translation>Trop près du seuil pour trancher</translation>
    </message>
    <message>
        <source>Too early</source>
        <translation>Trop tôt</translation>
    </message>
    <message>
        <source>Within the time for control</source>
        <translation>Au bon moment pour traiter</translation>
    </message>
    <message>
        <source>Too late</source>
        <translation>Trop tard</translation>
    </message>
    <message>
        <source>Timing not known</source>
        <translation>Moment inconnu</translation>
    </message>
    <message>
        <source>Control would cost more than the larvae do. Leave the field as it is.</source>
        <translation>Le traitement coûterait plus que les larves. Laissez le champ tel quel.</translation>
    </message>
    <message>
        <source>Search more frames.</source>
        <translation>Examinez plus de cadres.</translation>
    </message>
    <message>
        <source>Look again in a few days.</source>
        <translation>Réexaminez dans quelques jours.</translation>
    </message>
    <message>
        <source>Look at crop stage, pods and larvae: whether it is the right time is not known.</source>
        <translation>Regardez le stade de la culture, les siliques et les larves&#xa0;: on ne sait pas si c’est le bon moment.</translation>
    </message>
    <message>
        <source>Control would pay for itself, if the label and your adviser allow it.</source>
        <translation>Le traitement serait rentable, si l’étiquette et votre conseiller le permettent.</translation>
    </message>
    <message>
        <source>It is too late for control to help here.</source>
        <translation>Il est trop tard pour qu’un traitement soit utile ici.</translation>
    </message>
    <message>
        <source>The crop is at BBCH %1; the window opens at %2.</source>
        <translation>La culture est à BBCH %1&#xa0;; la fenêtre s’ouvre à %2.</translation>
    </message>
    <message>
        <source>%1 % of the larvae are %3 mm or longer; it takes %2 %.</source>
        <translation>%1&#xa0;% des larves ont %3 mm ou plus&#xa0;; il en faut %2&#xa0;%.</translation>
    </message>
    <message>
        <source>No pod is damaged yet.</source>
        <translation>Aucune silique n’est encore endommagée.</translation>
    </message>
    <message>
        <source>The crop is at BBCH %1; the window closed at %2.</source>
        <translation>La culture est à BBCH %1&#xa0;; la fenêtre s’est fermée à %2.</translation>
    </message>
    <message>
        <source>%1 % of the pods are damaged; the decision comes before %2 %.</source>
        <translation>%1&#xa0;% des siliques sont endommagées&#xa0;; la décision se prend avant %2&#xa0;%.</translation>
    </message>
    <message>
        <source>The crop is at BBCH %1, within %2 to %3.</source>
        <translation>La culture est à BBCH %1, entre %2 et %3.</translation>
    </message>
    <message>
        <source>%1 % of the larvae are %2 mm or longer.</source>
        <translation>%1&#xa0;% des larves ont %2 mm ou plus.</translation>
    </message>
    <message>
        <source>%1 % of the pods are damaged: decide before it is %2 %.</source>
        <translation>%1&#xa0;% des siliques sont endommagées&#xa0;: décidez avant %2&#xa0;%.</translation>
    </message>
    <message>
        <source>The label&apos;s %1 before cutting leave %2, today included.</source>
        <translation>Délai de l’étiquette avant la coupe&#xa0;: %1&#xa0;; il reste %2, aujourd’hui compris.</translation>
    </message>
    <message>
        <source>Not said: the crop stage.</source>
        <translation>Non indiqué&#xa0;: le stade de la culture.</translation>
    </message>
    <message>
        <source>Not said: how many larvae have reached the size to control.</source>
        <translation>Non indiqué&#xa0;: combien de larves ont atteint la taille à combattre.</translation>
    </message>
    <message>
        <source>Not said: how many pods are damaged.</source>
        <translation>Non indiqué&#xa0;: combien de siliques sont endommagées.</translation>
    </message>
    <message>
        <source>Not said: the days before harvest on the label, or the day of cutting.</source>
        <translation>Non indiqué&#xa0;: les jours avant récolte selon l’étiquette, ou le jour de la coupe.</translation>
    </message>
    <message>
        <source>By the label, counted to cutting, the last day is %1.</source>
        <translation>Selon l’étiquette, en comptant jusqu’à la coupe, le dernier jour est le %1.</translation>
    </message>
    <message>
        <source>A good day to look again: %1.</source>
        <translation>Un bon jour pour réexaminer&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The mean, %1, is below the threshold of %2.</source>
        <translation>La moyenne, %1, est sous le seuil de %2.</translation>
    </message>
    <message>
        <source>The mean, %1, is above the threshold of %2.</source>
        <translation>La moyenne, %1, est au-dessus du seuil de %2.</translation>
    </message>
    <message>
        <source>The threshold of %3 lies within the range, %1 to %2.</source>
        <translation>Le seuil de %3 est dans l’intervalle, de %1 à %2.</translation>
    </message>
    <message>
        <source>Frames searched: %1. That is too few to say.</source>
        <translation>Cadres examinés&#xa0;: %1. C’est trop peu pour se prononcer.</translation>
    </message>
    <message>
        <source>The chance that the field is over the threshold is %1 %.</source>
        <translation>La probabilité que le champ dépasse le seuil est de %1&#xa0;%.</translation>
    </message>
    <message>
        <source>The threshold is divided by %1 for a dry season.</source>
        <translation>Le seuil est divisé par %1 pour une saison sèche.</translation>
    </message>
    <message>
        <source>The threshold stands at its floor, %1.</source>
        <translation>Le seuil est à son plancher, %1.</translation>
    </message>
    <message>
        <source>The threshold lies outside what has been published.</source>
        <translation>Le seuil est hors de ce qui a été publié.</translation>
    </message>
    <message>
        <source>It is too early for control.</source>
        <translation>Il est trop tôt pour traiter.</translation>
    </message>
    <message>
        <source>It is within the time for control.</source>
        <translation>C’est le bon moment pour traiter.</translation>
    </message>
    <message>
        <source>It is too late for control.</source>
        <translation>Il est trop tard pour traiter.</translation>
    </message>
    <message>
        <source>Whether it is the time for control is not known.</source>
        <translation>On ne sait pas si c’est le moment de traiter.</translation>
    </message>
    <message>
        <source>About %1 would probably settle it.</source>
        <translation>Il suffirait sans doute d’environ %1 pour trancher.</translation>
    </message>
    <message>
        <source>At a price above %1 control would pay.</source>
        <translation>À un prix supérieur à %1, le traitement serait rentable.</translation>
    </message>
    <message>
        <source>At a price below %1 control would not pay.</source>
        <translation>À un prix inférieur à %1, le traitement ne serait pas rentable.</translation>
    </message>
    <message>
        <source>At a cost above %1 control would not pay.</source>
        <translation>À un coût supérieur à %1, le traitement ne serait pas rentable.</translation>
    </message>
    <message>
        <source>At a cost below %1 control would pay.</source>
        <translation>À un coût inférieur à %1, le traitement serait rentable.</translation>
    </message>
    <message>
        <source>Called a dry season, the threshold would be %1, and control would pay.</source>
        <translation>Avec une saison jugée sèche, le seuil serait de %1 et le traitement serait rentable.</translation>
    </message>
    <message>
        <source>Not called a dry season, the threshold would be %1, and control would not pay.</source>
        <translation>Sans saison jugée sèche, le seuil serait de %1 et le traitement ne serait pas rentable.</translation>
    </message>
    <message>
        <source>Looking again on %1.</source>
        <translation>Un nouvel examen le %1.</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>No district</source>
        <translation>Sans district</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>the first and the last day of a week</extracomment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 of %2 in</source>
        <extracomment>traps that reported, traps that are expected to</extracomment>
        <translation>%1 sur %2 reçus</translation>
    </message>
    <message>
        <source>%1 of them could not be counted</source>
        <translation>dont %1 sans relevé possible</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 en retard</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>relevé</translation>
    </message>
    <message>
        <source>could not count</source>
        <translation>relevé impossible</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>late</source>
        <translation>en retard</translation>
    </message>
    <message>
        <source>Trap counts of the week %1</source>
        <translation>Relevés des pièges, semaine&#xa0;: %1</translation>
    </message>
    <message>
        <source>Hello,</source>
        <translation>Bonjour,</translation>
    </message>
    <message>
        <source>Hello %1,</source>
        <translation>Bonjour %1,</translation>
    </message>
    <message>
        <source>For the week %1 no count has arrived here yet from:
- %2</source>
        <translation>Pour la semaine (%1), aucun relevé n’est encore arrivé ici pour&#xa0;:
- %2</translation>
    </message>
    <message>
        <source>Thank you.</source>
        <translation>Merci.</translation>
    </message>
    <message>
        <source>Thank you,
%1</source>
        <translation>Merci,
%1</translation>
    </message>
    <message>
        <source>If you have been there, send the number caught and the day, in any way that is easy for you. Zero is a count too. If the trap could not be counted, or you could not go, that helps as well.</source>
        <translation>Si la visite a été faite, envoyez le nombre capturé et le jour, de la manière qui vous convient. Zéro est aussi un relevé. Si le relevé était impossible, ou si vous n’avez pas pu y aller, le savoir nous aide aussi.</translation>
    </message>
</context>
<context>
    <name>DeskDetail</name>
    <message>
        <source>To look at</source>
        <translation>À examiner</translation>
    </message>
    <message>
        <source>No trap is chosen</source>
        <translation>Aucun piège n’est choisi</translation>
    </message>
    <message>
        <source>Choose a line</source>
        <translation>Choisissez une ligne</translation>
    </message>
    <message>
        <source>Arrow keys move in the list; Enter goes to what can be done, Escape back to the list.</source>
        <translation>Les flèches parcourent la liste&#xa0;; Entrée mène aux actions, Échap ramène à la liste.</translation>
    </message>
    <message>
        <source>Visits, the latest first</source>
        <translation>Visites, la plus récente d’abord</translation>
    </message>
    <message>
        <source>The season of this trap</source>
        <translation>La saison de ce piège</translation>
    </message>
    <message>
        <source>Ask about the count of %1</source>
        <translation>Poser une question sur le relevé du %1</translation>
    </message>
</context>
<context>
    <name>DeskFlag</name>
    <message>
        <source>It stands</source>
        <translation>Maintenir</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Demander</translation>
    </message>
</context>
<context>
    <name>DeskHead</name>
    <message>
        <source>Week before</source>
        <translation>Semaine précédente</translation>
    </message>
    <message>
        <source>Week after</source>
        <translation>Semaine suivante</translation>
    </message>
    <message>
        <source>Type in counts</source>
        <translation>Saisir des relevés</translation>
    </message>
    <message>
        <source>Which lines</source>
        <translation>Quelles lignes</translation>
    </message>
    <message>
        <source>Traps</source>
        <extracomment>lines of the desk; a number may follow each</extracomment>
        <translation>Pièges</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>En retard</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>À examiner</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nouveau</translation>
    </message>
    <message>
        <source>The records are being looked through.</source>
        <translation>Les enregistrements sont en cours de vérification.</translation>
    </message>
    <message>
        <source>Nothing to look at.</source>
        <translation>Rien à examiner.</translation>
    </message>
    <message>
        <source>Nobody is late.</source>
        <translation>Personne n’est en retard.</translation>
    </message>
    <message>
        <source>Nothing came in since you last looked.</source>
        <translation>Rien n’est arrivé depuis votre dernier passage.</translation>
    </message>
    <message>
        <source>No trap is expected to report for this week.</source>
        <translation>Aucun piège n’est attendu pour cette semaine.</translation>
    </message>
    <message>
        <source>Space marks a line, A all of them, S says that they stand.</source>
        <translation>Espace marque une ligne, A les marque toutes, S les maintient.</translation>
    </message>
    <message>
        <source>I have seen these</source>
        <translation>J’ai tout vu</translation>
    </message>
</context>
<context>
    <name>DeskQuestion</name>
    <message>
        <source>The question is settled</source>
        <translation>La question est réglée</translation>
    </message>
    <message>
        <source>answered</source>
        <translation>réponse reçue</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>question posée</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>quelqu’un</translation>
    </message>
    <message>
        <source>%1 asked %2, %3</source>
        <extracomment>names, then a day</extracomment>
        <translation>%1 a posé une question à %2, le %3</translation>
    </message>
    <message>
        <source>No answer yet.</source>
        <translation>Pas encore de réponse.</translation>
    </message>
    <message>
        <source>%1 answered, %2: %3</source>
        <extracomment>a name, a day, what was answered</extracomment>
        <translation>%1 a répondu, le %2&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>DeskRow</name>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marquée</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marquer</translation>
    </message>
    <message>
        <source>Mark %1</source>
        <translation>Marquer %1</translation>
    </message>
</context>
<context>
    <name>DeskTable</name>
    <message>
        <source>This week’s desk</source>
        <translation>Bureau de la semaine</translation>
    </message>
    <message>
        <source>It stands: the one marked</source>
        <translation>Maintenir la ligne marquée</translation>
    </message>
    <message>
        <source>They stand: %1 marked</source>
        <translation>Maintenir les %1 lignes marquées</translation>
    </message>
</context>
<context>
    <name>DeskText</name>
    <message>
        <source>%1, %2</source>
        <extracomment>a day, and how a count was reported: &quot;14 Jul, by phone&quot;</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Quelqu’un</translation>
    </message>
    <message>
        <source>not expected</source>
        <translation>pas attendu</translation>
    </message>
    <message>
        <source>Who has it</source>
        <translation>Qui s’en occupe</translation>
    </message>
    <message>
        <source>District</source>
        <translation>District</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Installation</translation>
    </message>
    <message>
        <source>Taken down</source>
        <translation>Retrait</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Écarté&#xa0;: %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
</context>
<context>
    <name>DeskVisit</name>
    <message>
        <source>Let it count again</source>
        <translation>Le compter de nouveau</translation>
    </message>
</context>
<context>
    <name>DeskWays</name>
    <message>
        <source>This week’s desk</source>
        <translation>Bureau de la semaine</translation>
    </message>
    <message>
        <source>Who has reported, typing counts in, and what to look at</source>
        <translation>Qui a transmis ses relevés, la saisie, et ce qui est à examiner</translation>
    </message>
    <message>
        <source>Bulletin</source>
        <translation>Bulletin</translation>
    </message>
    <message>
        <source>The week as everybody may read it, and publishing it</source>
        <translation>La semaine telle que chacun peut la lire, et sa publication</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>Every trap, what lies between them, and your boundaries</source>
        <translation>Tous les pièges, ce qu’il y a entre eux, et vos limites</translation>
    </message>
    <message>
        <source>Weeks and years</source>
        <translation>Semaines et années</translation>
    </message>
    <message>
        <source>Districts by week, and this year against the last ones</source>
        <translation>Les districts par semaine, et cette année comparée aux précédentes</translation>
    </message>
    <message>
        <source>Bring in temperatures</source>
        <translation>Importer des températures</translation>
    </message>
    <message>
        <source>Days of a weather station, for the calendar and the flight</source>
        <translation>Jours d’une station météo, pour le calendrier et le vol</translation>
    </message>
    <message>
        <source>Winter</source>
        <translation>Hiver</translation>
    </message>
    <message>
        <source>What to order, whom to thank, and who goes on</source>
        <translation>Que commander, qui remercier et qui continue</translation>
    </message>
    <message>
        <source>Bring in past years</source>
        <translation>Importer les années passées</translation>
    </message>
    <message>
        <source>Counts from a spreadsheet: looked at before anything is kept, and taken back in one go</source>
        <translation>Relevés d’un tableur&#xa0;: examinés avant d’être conservés, et annulés d’un seul coup</translation>
    </message>
</context>
<context>
    <name>DeviceCard</name>
    <message>
        <source>%1 (%2)</source>
        <comment>name of a device, remark</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Make it a main device</source>
        <translation>En faire un appareil principal</translation>
    </message>
    <message>
        <source>It is lost: end it</source>
        <translation>Appareil perdu&#xa0;: y mettre fin</translation>
    </message>
    <message>
        <source>End “%1”?</source>
        <translation>Mettre fin à «&#xa0;%1&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>Everything of it that is here now stays. Whatever it sends from now on is kept aside, until you let it in piece by piece.</source>
        <translation>Tout ce qui en est déjà arrivé ici reste. Ce qu’il envoie désormais est mis de côté, jusqu’à ce que vous l’admettiez élément par élément.</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Y mettre fin</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
</context>
<context>
    <name>DifferenceCard</name>
    <message>
        <source>%1 · %2</source>
        <comment>value, who and when</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Another value, in %1</source>
        <translation>Autre valeur, en %1</translation>
    </message>
    <message>
        <source>Another value</source>
        <translation>Autre valeur</translation>
    </message>
</context>
<context>
    <name>Differences</name>
    <message>
        <source>Differences</source>
        <translation>Différences</translation>
    </message>
    <message>
        <source>Both values stay in the history, whichever you choose.</source>
        <translation>Les deux valeurs restent dans l’historique, quel que soit votre choix.</translation>
    </message>
    <message>
        <source>A coordinator settles these. Until then the highest value is drawn, and marked.</source>
        <translation>La coordination tranche. D’ici là, la valeur la plus haute est affichée, et marquée.</translation>
    </message>
    <message>
        <source>Nothing to decide</source>
        <translation>Rien à trancher</translation>
    </message>
    <message>
        <source>Where two people say different things of the same, both stand here until you choose.</source>
        <translation>Quand deux personnes indiquent des valeurs différentes pour la même chose, les deux restent ici jusqu’à votre choix.</translation>
    </message>
    <message>
        <source>Proposals to records that stand</source>
        <translation>Propositions sur des enregistrements maintenus</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Accepter</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Changed since you said that it stands</source>
        <translation>Modifiés depuis que vous les avez maintenus</translation>
    </message>
    <message>
        <source>It stands as it is now</source>
        <translation>Maintenir tel quel</translation>
    </message>
    <message>
        <source>Kept aside: stored and passed on, but not counted</source>
        <translation>Mis de côté&#xa0;: conservés et transmis, mais pas comptés</translation>
    </message>
    <message>
        <source>Let it in</source>
        <translation>Admettre</translation>
    </message>
    <message>
        <source>Files that were refused</source>
        <translation>Fichiers refusés</translation>
    </message>
    <message>
        <source>Choose a value above</source>
        <translation>Choisissez une valeur ci-dessus</translation>
    </message>
    <message>
        <source>Settle it</source>
        <translation>Trancher</translation>
    </message>
    <message>
        <source>Settle %1</source>
        <translation>Trancher&#xa0;: %1</translation>
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
        <translation>rehausser le piège</translation>
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
        <translation>Rehausser le piège</translation>
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
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre. Écrivez-le en chiffres.</translation>
    </message>
    <message>
        <source>“%1” is not a whole number. Leave out the part after the point.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre entier. Enlevez la partie décimale.</translation>
    </message>
    <message>
        <source>%1 must be from %2 to %3. Look at the number again.</source>
        <translation>%1&#xa0;: la valeur doit être entre %2 et %3. Vérifiez le nombre.</translation>
    </message>
    <message>
        <source>%1 is too long. Shorten it to %2 characters or fewer.</source>
        <translation>%1&#xa0;: texte trop long. Raccourcissez-le à %2 caractères au plus.</translation>
    </message>
    <message>
        <source>%1 is empty. Fill it in.</source>
        <translation>%1&#xa0;: rien n’est saisi. À compléter.</translation>
    </message>
    <message>
        <source>“%1” is not a day of the calendar. Write it as year-month-day, such as 2026-07-14.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour du calendrier. Écrivez année-mois-jour, par exemple 2026-07-14.</translation>
    </message>
    <message>
        <source>“%1” is not a place. Type latitude and longitude in degrees, such as 52.1579, -106.6702.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un emplacement. Écrivez la latitude et la longitude en degrés, par exemple 52.1579, -106.6702.</translation>
    </message>
    <message>
        <source>%1 cannot be “%2”. Choose one of: %3.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas possible. Choisissez parmi&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1 cannot be “%2”. Choose one of the values offered.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas possible. Choisissez une des valeurs proposées.</translation>
    </message>
    <message>
        <source>The counted part is larger than the whole catch. Check both amounts.</source>
        <translation>La partie comptée est plus grande que la capture entière. Vérifiez les deux quantités.</translation>
    </message>
    <message>
        <source>One counted part shows no spread. Count a second part of the catch.</source>
        <translation>Une seule partie comptée ne montre pas la dispersion. Comptez une deuxième partie de la capture.</translation>
    </message>
    <message>
        <source>The protocol file %1 cannot be read: line %2, %3. Correct that line, or put the file back as it came.</source>
        <translation>Le fichier de protocole %1 ne peut pas être lu&#xa0;: ligne %2, %3. Corrigez cette ligne, ou remettez le fichier d’origine.</translation>
    </message>
    <message>
        <source>The protocol file %1 is not sound: line %2, %3. Correct that line, or put the file back as it came.</source>
        <translation>Le fichier de protocole %1 n’est pas valable&#xa0;: ligne %2, %3. Corrigez cette ligne, ou remettez le fichier d’origine.</translation>
    </message>
    <message>
        <source>There is no protocol for “%1”. Check the name, or add its protocol file.</source>
        <translation>Il n’y a pas de protocole pour «&#xa0;%1&#xa0;». Vérifiez le nom, ou ajoutez son fichier de protocole.</translation>
    </message>
    <message>
        <source>The protocol for %1 has no bands for the trap type “%2”. The catch can be shown, but not as a band.</source>
        <translation>Le protocole (%1) n’a pas de classes pour le type de piège «&#xa0;%2&#xa0;». La capture peut être affichée, mais pas sa classe.</translation>
    </message>
    <message>
        <source>There is no store at %1. Check the name of the file.</source>
        <translation>Il n’y a pas de registre à %1. Vérifiez le nom du fichier.</translation>
    </message>
    <message>
        <source>“%1” is not a Duskrow store. It was left as it is. Choose another file.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un registre Duskrow. Le fichier est resté tel quel. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>The store %1 is damaged. It was left as it is. Keep the file, and go on from a copy or an exchange with others.</source>
        <translation>Le registre %1 est endommagé. Il est resté tel quel. Gardez le fichier, et repartez d’une copie ou d’un échange avec d’autres.</translation>
    </message>
    <message>
        <source>The store %1 was written by a newer version of Duskrow. It was left as it is. Update Duskrow, then open it again.</source>
        <translation>Le registre %1 a été écrit par une version plus récente de Duskrow. Il est resté tel quel. Mettez Duskrow à jour, puis ouvrez-le de nouveau.</translation>
    </message>
    <message>
        <source>The store %1 was written by an older version of Duskrow. Open it once in Duskrow, then try again.</source>
        <translation>Le registre %1 a été écrit par une version plus ancienne de Duskrow. Ouvrez-le une fois dans Duskrow, puis réessayez.</translation>
    </message>
    <message>
        <source>Another program has the store %1 open. Close it there, then try again.</source>
        <translation>Un autre logiciel a ouvert le registre %1. Fermez-le là, puis réessayez.</translation>
    </message>
    <message>
        <source>The store %1 cannot be written to. Check that you may write in its folder, or move it to one where you may.</source>
        <translation>Impossible d’écrire dans le registre %1. Vérifiez que vous pouvez écrire dans son dossier, ou déplacez-le là où vous le pouvez.</translation>
    </message>
    <message>
        <source>There is already a file at %1. It was left as it is. Choose another name.</source>
        <translation>Il y a déjà un fichier à %1. Il est resté tel quel. Choisissez un autre nom.</translation>
    </message>
    <message>
        <source>There is no room left where %1 lies, so nothing was kept just now. Make room, then try again.</source>
        <translation>Il n’y a plus de place là où se trouve %1&#xa0;; rien n’a donc été conservé à l’instant. Libérez de la place, puis réessayez.</translation>
    </message>
    <message>
        <source>The disk did not read or write %1 as it should, so nothing was kept just now. Try again, and copy the file elsewhere if it goes on.</source>
        <translation>Le disque n’a pas lu ou écrit %1 comme il faut&#xa0;; rien n’a donc été conservé à l’instant. Réessayez, et copiez le fichier ailleurs si cela continue.</translation>
    </message>
    <message>
        <source>The key of this installation at %1 cannot be read or made. Check that you may read and write there.</source>
        <translation>La clé de cette installation, %1, ne peut être ni lue ni créée. Vérifiez que vous pouvez lire et écrire à cet endroit.</translation>
    </message>
    <message>
        <source>An entry in the log cannot be read (%1). It was left as it is; update Duskrow if others use a newer version.</source>
        <translation>Une saisie du journal ne peut pas être lue (%1). Elle est restée telle quelle&#xa0;; mettez Duskrow à jour si d’autres utilisent une version plus récente.</translation>
    </message>
    <message>
        <source>This %1 is not in the store. Go back and choose it again.</source>
        <translation>Introuvable dans le registre&#xa0;: %1. Revenez en arrière et refaites le choix.</translation>
    </message>
    <message>
        <source>The file %1 cannot be read. Check its name and that you may read it.</source>
        <translation>Le fichier %1 ne peut pas être lu. Vérifiez son nom et votre droit de le lire.</translation>
    </message>
    <message>
        <source>“%1” cannot be written. Check that its folder exists, has room, and lets you write.</source>
        <translation>Impossible d’écrire «&#xa0;%1&#xa0;». Vérifiez que son dossier existe, qu’il a de la place et que vous pouvez y écrire.</translation>
    </message>
    <message>
        <source>The picture %1 cannot be used. Choose a picture file of at most 32 MB.</source>
        <translation>L’image %1 ne peut pas être utilisée. Choisissez un fichier image d’au plus 32 MB.</translation>
    </message>
    <message>
        <source>There is no position right now. Wait under the open sky, or type the coordinates.</source>
        <translation>Pas de position pour le moment. Attendez à ciel ouvert, ou saisissez les coordonnées.</translation>
    </message>
    <message>
        <source>The position log %1 cannot be read. Choose a file of NMEA sentences.</source>
        <translation>Le journal de positions %1 ne peut pas être lu. Choisissez un fichier de trames NMEA.</translation>
    </message>
    <message>
        <source>There is no %1 called “%2”. Check the spelling.</source>
        <translation>%1&#xa0;: rien ne s’appelle «&#xa0;%2&#xa0;». Vérifiez l’orthographe.</translation>
    </message>
    <message>
        <source>More than one %1 is called “%2”. Name it more fully.</source>
        <translation>%1&#xa0;: plusieurs s’appellent «&#xa0;%2&#xa0;». Donnez un nom plus complet.</translation>
    </message>
    <message>
        <source>“%1” is not a format that can be written. Choose one of: %2.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un format possible pour l’écriture. Choisissez parmi&#xa0;: %2.</translation>
    </message>
    <message>
        <source>“%1” is not a time of day. Type hours and minutes, such as 18:00.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une heure. Écrivez heures et minutes, par exemple 18:00.</translation>
    </message>
    <message>
        <source>The cost is in %1 but the price is in %2. Give both in the same dollars.</source>
        <translation>Le coût est en %1 mais le prix en %2. Donnez les deux dans les mêmes dollars.</translation>
    </message>
    <message>
        <source>The cost is given both as one sum and in parts. Leave one of them out.</source>
        <translation>Le coût est donné à la fois en tout et en détail. Enlevez l’un des deux.</translation>
    </message>
    <message>
        <source>The protocol for %1 has no threshold for the crop “%2”. Count larvae all the same, and ask an adviser.</source>
        <translation>Le protocole (%1) n’a pas de seuil pour la culture «&#xa0;%2&#xa0;». Comptez quand même les larves, et demandez l’avis d’un conseiller.</translation>
    </message>
    <message>
        <source>Line %1 of the table cannot be read. Close its quotes, or give it all its columns.</source>
        <translation>La ligne %1 du tableau ne peut pas être lue. Fermez ses guillemets, ou donnez-lui toutes ses colonnes.</translation>
    </message>
    <message>
        <source>The table has no column “%1”. Name the columns on its first line.</source>
        <translation>Le tableau n’a pas de colonne «&#xa0;%1&#xa0;». Nommez les colonnes sur sa première ligne.</translation>
    </message>
    <message>
        <source>The file %1 holds no count. Write one in each row.</source>
        <translation>Le fichier %1 ne contient aucun nombre compté. Mettez-en un par ligne.</translation>
    </message>
    <message>
        <source>The file %1 has no column “%2”. Name its columns in the first row.</source>
        <translation>Le fichier %1 n’a pas de colonne «&#xa0;%2&#xa0;». Nommez ses colonnes sur la première ligne.</translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” is not a count. Write one whole number in each row, such as 7.</source>
        <translation>À la ligne %2 de %1, «&#xa0;%3&#xa0;» n’est pas un nombre compté. Mettez un nombre entier par ligne, par exemple 7.</translation>
    </message>
    <message>
        <source>This file is not finished copying. Wait a little and exchange again.</source>
        <translation>La copie de ce fichier n’est pas terminée. Attendez un peu et refaites l’échange.</translation>
    </message>
    <message>
        <source>What came in is damaged or is no part of an exchange (%1). It was kept aside; ask for it again.</source>
        <translation>Ce qui est arrivé est endommagé ou n’appartient pas à un échange (%1). C’est mis de côté&#xa0;; demandez-le de nouveau.</translation>
    </message>
    <message>
        <source>What came in is larger than an exchange allows (%1). It was kept aside; tell the coordinator.</source>
        <translation>Ce qui est arrivé dépasse la taille permise pour un échange (%1). C’est mis de côté&#xa0;; prévenez la coordination.</translation>
    </message>
    <message>
        <source>What came in is not signed by the device it names. It was kept aside; tell the coordinator.</source>
        <translation>Ce qui est arrivé n’est pas signé par l’appareil indiqué. C’est mis de côté&#xa0;; prévenez la coordination.</translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” is not a place. Write latitude and longitude in degrees, such as 52.1579, -106.6702.</source>
        <translation>À la ligne %2 de %1, «&#xa0;%3&#xa0;» n’est pas un emplacement. Écrivez la latitude et la longitude en degrés, par exemple 52.1579, -106.6702.</translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” is not the number of a stop. Number the stops from 1.</source>
        <translation>À la ligne %2 de %1, «&#xa0;%3&#xa0;» n’est pas un numéro d’arrêt. Numérotez les arrêts à partir de 1.</translation>
    </message>
    <message>
        <source>In row %2 of %1, “%3” does not say whether the field is infested. Write yes or no.</source>
        <translation>À la ligne %2 de %1, «&#xa0;%3&#xa0;» ne dit pas si le champ est infesté. Écrivez yes (oui) ou no (non).</translation>
    </message>
    <message>
        <source>The database at %1 does not answer. See that it runs and that its address is right.</source>
        <translation>La base de données à %1 ne répond pas. Vérifiez qu’elle est en marche et que son adresse est juste.</translation>
    </message>
    <message>
        <source>“%1” is no invitation. It has ten letters and digits, such as 7K3QM-2XV9A.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une invitation. Une invitation a dix lettres et chiffres, par exemple 7K3QM-2XV9A.</translation>
    </message>
    <message>
        <source>There is too little memory. Close other programs and try again.</source>
        <translation>Il n’y a pas assez de mémoire. Fermez d’autres logiciels et réessayez.</translation>
    </message>
    <message>
        <source>Nobody can be served at %1. Another program may use it, or it is no address of this computer.</source>
        <translation>Impossible de servir à l’adresse %1. Un autre logiciel l’utilise peut-être, ou ce n’est pas une adresse de cet ordinateur.</translation>
    </message>
    <message>
        <source>What came in was written by a newer version of Duskrow (%1). It was kept and is passed on; update Duskrow to use it.</source>
        <translation>Ce qui est arrivé a été écrit par une version plus récente de Duskrow (%1). C’est conservé et transmis&#xa0;; mettez Duskrow à jour pour l’utiliser.</translation>
    </message>
    <message>
        <source>“%1” belongs to another programme. It was kept aside; open that programme to take it in.</source>
        <translation>«&#xa0;%1&#xa0;» appartient à un autre programme. C’est mis de côté&#xa0;; ouvrez ce programme pour l’intégrer.</translation>
    </message>
    <message>
        <source>The folder “%1” is not there. Plug the stick in or wait until the folder is connected, then exchange again. Everything is kept on this device.</source>
        <translation>Le dossier «&#xa0;%1&#xa0;» n’est pas là. Branchez la clé USB ou attendez que le dossier soit connecté, puis refaites l’échange. Tout est conservé sur cet appareil.</translation>
    </message>
    <message>
        <source>There are more files in “%1” than an exchange looks through. Move foreign files out of it.</source>
        <translation>Il y a plus de fichiers dans «&#xa0;%1&#xa0;» qu’un échange n’en parcourt. Déplacez ailleurs les fichiers étrangers.</translation>
    </message>
    <message>
        <source>“%1” is not a file that Duskrow wrote. Choose another one.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un fichier écrit par Duskrow. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>“%1” stops before its end. All that was whole was taken in; ask for the file again for the rest.</source>
        <translation>«&#xa0;%1&#xa0;» s’arrête avant sa fin. Tout ce qui était entier a été intégré&#xa0;; demandez de nouveau le fichier pour le reste.</translation>
    </message>
    <message>
        <source>The hub at %1 does not answer. Everything is kept on this device and goes on its way with the next exchange.</source>
        <translation>Le serveur à %1 ne répond pas. Tout est conservé sur cet appareil et partira au prochain échange.</translation>
    </message>
    <message>
        <source>What answers at %1 is not a hub: perhaps a log-in page of the network here. Open a browser once, or try another network.</source>
        <translation>Ce qui répond à %1 n’est pas un serveur&#xa0;: peut-être la page de connexion du réseau local. Ouvrez une fois un navigateur, ou essayez un autre réseau.</translation>
    </message>
    <message>
        <source>What answers at %1 cannot prove that it is this hub, so nothing was sent. Try another network, or ask whoever runs the hub about its certificate.</source>
        <translation>Ce qui répond à %1 ne peut pas prouver qu’il est ce serveur&#xa0;; rien n’a donc été envoyé. Essayez un autre réseau, ou demandez ce qu’il en est du certificat à la personne qui tient le serveur.</translation>
    </message>
    <message>
        <source>The hub at %1 says: %2. Everything is kept on this device.</source>
        <translation>Le serveur à %1 dit&#xa0;: %2. Tout est conservé sur cet appareil.</translation>
    </message>
    <message>
        <source>The hub at %1 kept entries aside (%2). They are safe there and here; the coordinator can let them in.</source>
        <translation>Le serveur à %1 a mis des saisies de côté (%2). Elles sont en sûreté là-bas et ici&#xa0;; la coordination peut les admettre.</translation>
    </message>
    <message>
        <source>This device is not enrolled at %1, or was ended there. Ask the coordinator for an invitation.</source>
        <translation>Cet appareil n’est pas inscrit à %1, ou il y a été mis fin. Demandez une invitation à la coordination.</translation>
    </message>
    <message>
        <source>Nobody knows this code here. Look at the ten characters again, or ask the coordinator for a new one.</source>
        <translation>Personne ne connaît ce code ici. Vérifiez les dix caractères, ou demandez un nouveau code à la coordination.</translation>
    </message>
    <message>
        <source>This invitation was good until %1. Ask the coordinator for a new one.</source>
        <translation>Cette invitation était valable jusqu’au %1. Demandez-en une nouvelle à la coordination.</translation>
    </message>
    <message>
        <source>A device has come in with this code already. Ask the coordinator for a new one.</source>
        <translation>Un appareil est déjà entré avec ce code. Demandez-en un nouveau à la coordination.</translation>
    </message>
    <message>
        <source>More than one programme or founder answers to this code. Ask the coordinator for the whole invitation, as a link or picture.</source>
        <translation>Plus d’un programme ou fondateur répond à ce code. Demandez à la coordination l’invitation entière, en lien ou en image.</translation>
    </message>
    <message>
        <source>This device is in that programme already, with the key %1. Open its store; if that is gone for good, move the key away and join again.</source>
        <translation>Cet appareil est déjà dans ce programme, avec la clé %1. Ouvrez son registre&#xa0;; si le registre est perdu pour de bon, déplacez la clé ailleurs et rejoignez de nouveau le programme.</translation>
    </message>
    <message>
        <source>Nobody has said who holds the store %1. Open it in Duskrow once and choose your name.</source>
        <translation>Personne n’a dit à qui est le registre %1. Ouvrez-le une fois dans Duskrow et choisissez votre nom.</translation>
    </message>
    <message>
        <source>Only a coordinator of the programme may do this. Ask yours to.</source>
        <translation>Seule la coordination du programme peut faire cela. Demandez-le-lui.</translation>
    </message>
    <message>
        <source>Only the device that founded the programme, or one made its equal, may do this. Do it there.</source>
        <translation>Seul l’appareil qui a fondé le programme, ou un appareil devenu son égal, peut faire cela. Faites-le là.</translation>
    </message>
    <message>
        <source>The upper limit must be above the lower one. Look at both.</source>
        <translation>La limite supérieure doit être au-dessus de l’inférieure. Vérifiez les deux.</translation>
    </message>
    <message>
        <source>The bulletin of week %1 was published from another desk, and what that desk kept of it is not here. Go on there, or bring its folder of bulletins over.</source>
        <translation>Le bulletin de la semaine %1 a été publié depuis un autre bureau, et ce que ce bureau en a conservé n’est pas ici. Continuez là-bas, ou apportez son dossier de bulletins.</translation>
    </message>
    <message>
        <source>The counts of week %1 are not all due yet, so there is no bulletin of it. Wait until its days of grace are over.</source>
        <translation>Les relevés de la semaine %1 ne sont pas encore tous échus&#xa0;; elle n’a donc pas de bulletin. Attendez la fin de ses jours de tolérance.</translation>
    </message>
    <message>
        <source>The table has more than %1 rows. Part it into several files.</source>
        <translation>Le tableau a plus de %1 lignes. Partagez-le en plusieurs fichiers.</translation>
    </message>
    <message>
        <source>The file %1 is larger than %2 MiB. Part it into several files.</source>
        <translation>Le fichier %1 dépasse %2 MiB. Partagez-le en plusieurs fichiers.</translation>
    </message>
    <message>
        <source>“%1” may begin with the day or the month. Say which comes first.</source>
        <translation>«&#xa0;%1&#xa0;» peut commencer par le jour ou par le mois. Dites lequel vient en premier.</translation>
    </message>
    <message>
        <source>The year of “%1” has two digits. Say the year of the table, or write four.</source>
        <translation>L’année de «&#xa0;%1&#xa0;» a deux chiffres. Dites l’année du tableau, ou écrivez-en quatre.</translation>
    </message>
    <message>
        <source>%1 does not lie in the year %2. Check the day, or the year.</source>
        <translation>%1 n’est pas dans l’année %2. Vérifiez le jour, ou l’année.</translation>
    </message>
    <message>
        <source>Nothing says the year of this row. Say it for the table.</source>
        <translation>Rien n’indique l’année de cette ligne. Dites-la pour le tableau.</translation>
    </message>
    <message>
        <source>The mark in “%1” may be a decimal mark or not. Say which mark the table uses.</source>
        <translation>Le signe dans «&#xa0;%1&#xa0;» peut être un signe décimal ou non. Dites quel signe le tableau utilise.</translation>
    </message>
    <message>
        <source>Nothing says the unit of %1. Say it, such as cm.</source>
        <translation>%1&#xa0;: rien n’indique l’unité. Dites-la, par exemple cm.</translation>
    </message>
    <message>
        <source>%1 holds signs that are no text. Choose another encoding, or correct it in the file.</source>
        <translation>%1&#xa0;: certains signes ne sont pas du texte. Choisissez un autre codage, ou corrigez le fichier.</translation>
    </message>
    <message>
        <source>Two columns may be %1. Say which one it is.</source>
        <translation>Deux colonnes peuvent indiquer %1. Dites laquelle.</translation>
    </message>
    <message>
        <source>Line %1 has %2 for the same trap and day. Leave the right one in the file.</source>
        <translation>La ligne %1 a %2 pour le même piège et le même jour. Laissez le bon nombre dans le fichier.</translation>
    </message>
    <message>
        <source>The store has a visit to this trap on this day that says otherwise (%1). Correct it there if the file is right.</source>
        <translation>Le registre a une visite de ce piège ce jour-là qui dit autre chose (%1). Corrigez-la dans le registre si le fichier est juste.</translation>
    </message>
    <message>
        <source>This %1 was taken back in the store (%2). Let it stand again there if the file is right.</source>
        <translation>Retrait dans le registre&#xa0;: %1 (%2). À rétablir là si le fichier est juste.</translation>
    </message>
    <message>
        <source>The file says %1 nights, but by its days there are %2. The days are kept; look at them.</source>
        <translation>Le fichier indique %1 nuits, mais d’après ses jours il y en a %2. Les jours sont conservés&#xa0;; vérifiez-les.</translation>
    </message>
    <message>
        <source>Line %1 puts this trap in another place. The first place is kept; look at both.</source>
        <translation>La ligne %1 met ce piège à un autre emplacement. Le premier emplacement est conservé&#xa0;; vérifiez les deux.</translation>
    </message>
    <message>
        <source>Nothing of an import called “%1” stands here. Look at the list of imports on this device.</source>
        <translation>Il n’y a ici rien d’une importation appelée «&#xa0;%1&#xa0;». Voyez la liste des importations de cet appareil.</translation>
    </message>
    <message>
        <source>The minimum, %1, is above the maximum, %2. Perhaps the two columns are changed round.</source>
        <translation>Le minimum, %1, est au-dessus du maximum, %2. Les deux colonnes sont peut-être inversées.</translation>
    </message>
    <message>
        <source>Line %1 has other temperatures for the same day. Those were taken; take one of the lines out.</source>
        <translation>La ligne %1 a d’autres températures pour le même jour. Celles-là ont été prises&#xa0;; enlevez une des deux lignes.</translation>
    </message>
    <message>
        <source>The store holds %1 to %2 °C for this day, and that was left so. Correct it there if the file is right.</source>
        <translation>Le registre contient %1 à %2 °C pour ce jour, et cela n’a pas changé. Corrigez-le dans le registre si le fichier est juste.</translation>
    </message>
    <message>
        <source>It does not show whether these are degrees Celsius or Fahrenheit. Say which.</source>
        <translation>Rien n’indique si ce sont des degrés Celsius ou Fahrenheit. Dites-le.</translation>
    </message>
    <message>
        <source>The first line of the table is no line of names: “%2” stands there. Put a line with the names of the columns above it.</source>
        <translation>La première ligne du tableau ne contient pas de noms&#xa0;: on y trouve «&#xa0;%2&#xa0;». Ajoutez au-dessus une ligne avec les noms des colonnes.</translation>
    </message>
</context>
<context>
    <name>EstimateCard</name>
    <message>
        <source>Look at the counted parts</source>
        <translation>Revoir les parties comptées</translation>
    </message>
    <message>
        <source>Count one by one instead</source>
        <translation>Compter plutôt un par un</translation>
    </message>
</context>
<context>
    <name>Exchange</name>
    <message>
        <source>You have joined</source>
        <translation>Vous avez rejoint le programme</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Échange</translation>
    </message>
    <message>
        <source>The records of the programme are not here yet. Exchange by the way the invitation came, or open a file from the coordinator. If nothing comes, the coordinator has to let this device in first.</source>
        <translation>Les enregistrements du programme ne sont pas encore ici. Faites un échange par la voie d’où vient l’invitation, ou ouvrez un fichier de la coordination. Si rien n’arrive, la coordination doit d’abord admettre cet appareil.</translation>
    </message>
    <message>
        <source>on this phone</source>
        <translation>sur ce téléphone</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>remis</translation>
    </message>
    <message>
        <source>at the hub</source>
        <translation>sur le serveur</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Échanger maintenant</translation>
    </message>
</context>
<context>
    <name>ExchangeFile</name>
    <message>
        <source>One file to hand on</source>
        <translation>Un fichier à remettre</translation>
    </message>
    <message>
        <source>Write a file</source>
        <translation>Écrire un fichier</translation>
    </message>
    <message>
        <source>Open a file</source>
        <translation>Ouvrir un fichier</translation>
    </message>
    <message>
        <source>For whom?</source>
        <translation>Pour qui&#xa0;?</translation>
    </message>
    <message>
        <source>everybody: all of it</source>
        <translation>tout le monde&#xa0;: tout</translation>
    </message>
    <message>
        <source>Only what is not known to have reached this person.</source>
        <translation>Seulement ce dont on ne sait pas si cette personne l’a reçu.</translation>
    </message>
    <message>
        <source>Folder for the file</source>
        <translation>Dossier du fichier</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Écrire le fichier</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>A file from somebody else</source>
        <translation>Un fichier de quelqu’un d’autre</translation>
    </message>
    <message>
        <source>Its name ends in .dusk. You see what it would bring before anything is taken in.</source>
        <translation>Son nom finit par .dusk. Vous voyez ce qu’il apporterait avant que rien ne soit intégré.</translation>
    </message>
    <message>
        <source>Carried files (*.dusk)</source>
        <translation>Fichiers transportés (*.dusk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Voir le contenu</translation>
    </message>
</context>
<context>
    <name>ExchangeText</name>
    <message>
        <source>The device that wrote it is not one of the programme.</source>
        <translation>L’appareil qui l’a écrit n’est pas du programme.</translation>
    </message>
    <message>
        <source>It was written after this device was ended.</source>
        <translation>Cela a été écrit après la fin de cet appareil.</translation>
    </message>
    <message>
        <source>It was written after its author&apos;s last day in the programme.</source>
        <translation>Cela a été écrit après le dernier jour de son auteur dans le programme.</translation>
    </message>
    <message>
        <source>It is about a field that is neither its author&apos;s nor lent to them.</source>
        <translation>Cela porte sur un champ qui n’est pas à son auteur et ne lui est pas prêté.</translation>
    </message>
    <message>
        <source>It names another field than its record belongs to.</source>
        <translation>Cela nomme un autre champ que celui de son enregistrement.</translation>
    </message>
    <message>
        <source>Only a coordinator may say this.</source>
        <translation>Seule la coordination peut dire cela.</translation>
    </message>
    <message>
        <source>Only a main device of the programme may say this.</source>
        <translation>Seul un appareil principal du programme peut dire cela.</translation>
    </message>
    <message>
        <source>It settles a difference between others; a coordinator does that.</source>
        <translation>Cela tranche une différence entre d’autres&#xa0;; c’est à la coordination de le faire.</translation>
    </message>
    <message>
        <source>The record stands; this waits until a coordinator takes it.</source>
        <translation>L’enregistrement est maintenu&#xa0;; ceci attend que la coordination l’accepte.</translation>
    </message>
    <message>
        <source>One new entry came in.</source>
        <translation>Une nouvelle saisie est arrivée.</translation>
    </message>
    <message numerus="yes">
        <source>%n new entries came in.</source>
        <translation>
            <numerusform>%n nouvelle saisie est arrivée.</numerusform>
            <numerusform>%n nouvelles saisies sont arrivées.</numerusform>
        </translation>
    </message>
    <message>
        <source>One photograph came in.</source>
        <translation>Une photo est arrivée.</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs came in.</source>
        <translation>
            <numerusform>%n photo est arrivée.</numerusform>
            <numerusform>%n photos sont arrivées.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was new here is handed over.</source>
        <translation>Ce qui était nouveau ici est remis.</translation>
    </message>
    <message>
        <source>One photograph is handed over.</source>
        <translation>Une photo est remise.</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs are handed over.</source>
        <translation>
            <numerusform>%n photo est remise.</numerusform>
            <numerusform>%n photos sont remises.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing new on either side.</source>
        <translation>Rien de nouveau d’un côté ni de l’autre.</translation>
    </message>
    <message>
        <source>Stopped: what was done until then is done.</source>
        <translation>Arrêté&#xa0;: ce qui était fait jusque-là reste fait.</translation>
    </message>
    <message>
        <source>One bundle waits for an earlier one of the same device.</source>
        <translation>Un paquet en attend un précédent du même appareil.</translation>
    </message>
    <message numerus="yes">
        <source>%n bundles wait for an earlier one of the same device.</source>
        <translation>
            <numerusform>%n paquet en attend un précédent du même appareil.</numerusform>
            <numerusform>%n paquets en attendent un précédent du même appareil.</numerusform>
        </translation>
    </message>
    <message>
        <source>One file is not finished copying; it is taken in next time.</source>
        <translation>La copie d’un fichier n’est pas terminée&#xa0;; il sera intégré la prochaine fois.</translation>
    </message>
    <message numerus="yes">
        <source>%n files are not finished copying; they are taken in next time.</source>
        <translation>
            <numerusform>La copie de %n fichier n’est pas terminée&#xa0;; il sera intégré la prochaine fois.</numerusform>
            <numerusform>La copie de %n fichiers n’est pas terminée&#xa0;; ils seront intégrés la prochaine fois.</numerusform>
        </translation>
    </message>
    <message>
        <source>One file was refused and is kept aside.</source>
        <translation>Un fichier a été refusé et mis de côté.</translation>
    </message>
    <message numerus="yes">
        <source>%n files were refused and are kept aside.</source>
        <translation>
            <numerusform>%n fichier a été refusé et mis de côté.</numerusform>
            <numerusform>%n fichiers ont été refusés et mis de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>A device was copied or restored: different entries stand under one number. All are kept.</source>
        <translation>Un appareil a été copié ou restauré&#xa0;: des saisies différentes portent le même numéro. Toutes sont conservées.</translation>
    </message>
    <message>
        <source>The folder “%1”</source>
        <translation>Le dossier «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>The hub at %1</source>
        <translation>Le serveur à %1</translation>
    </message>
    <message>
        <source>today, %1</source>
        <comment>time of day</comment>
        <translation>aujourd’hui, %1</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>a day of this year</comment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time of day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>on this phone</source>
        <translation>sur ce téléphone</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>remis</translation>
    </message>
    <message>
        <source>at the hub</source>
        <translation>sur le serveur</translation>
    </message>
    <message>
        <source>It does not count by the rules of the programme.</source>
        <translation>Cela ne compte pas selon les règles du programme.</translation>
    </message>
</context>
<context>
    <name>ExchangeWays</name>
    <message>
        <source>Ways</source>
        <translation>Voies</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>when, what came of it</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>No longer this way</source>
        <translation>Ne plus utiliser cette voie</translation>
    </message>
    <message>
        <source>Add a folder</source>
        <translation>Ajouter un dossier</translation>
    </message>
    <message>
        <source>Another hub</source>
        <translation>Un autre serveur</translation>
    </message>
    <message>
        <source>Add a hub</source>
        <translation>Ajouter un serveur</translation>
    </message>
    <message>
        <source>Whoever can open this folder can read all of it: counts, fields and names. A stick or a folder of the programme’s own is best.</source>
        <translation>Quiconque peut ouvrir ce dossier peut tout y lire&#xa0;: relevés, champs et noms. Une clé USB ou un dossier propre au programme convient le mieux.</translation>
    </message>
    <message>
        <source>A folder that the others can open too</source>
        <translation>Un dossier que les autres peuvent ouvrir aussi</translation>
    </message>
    <message>
        <source>Exchange by this folder</source>
        <translation>Échanger par ce dossier</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Address of the hub</source>
        <translation>Adresse du serveur</translation>
    </message>
    <message>
        <source>Such as hub.example, from whoever keeps it.</source>
        <translation>Par exemple hub.example, reçue de la personne qui le tient.</translation>
    </message>
    <message>
        <source>Founding code</source>
        <translation>Code de fondation</translation>
    </message>
    <message>
        <source>Only to bring the programme to the hub for the first time. Otherwise leave it empty.</source>
        <translation>Seulement pour apporter le programme au serveur la première fois. Sinon, laissez vide.</translation>
    </message>
    <message>
        <source>Exchange by this hub</source>
        <translation>Échanger par ce serveur</translation>
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
        <translation>la raison du retrait</translation>
    </message>
    <message>
        <source>the name</source>
        <translation>le nom</translation>
    </message>
    <message>
        <source>the region</source>
        <translation>la région</translation>
    </message>
    <message>
        <source>whether it is invented</source>
        <translation>si c’est inventé</translation>
    </message>
    <message>
        <source>the year</source>
        <translation>l’année</translation>
    </message>
    <message>
        <source>the first day of the week</source>
        <translation>le premier jour de la semaine</translation>
    </message>
    <message>
        <source>the count day</source>
        <translation>le jour de relevé</translation>
    </message>
    <message>
        <source>the days of grace</source>
        <translation>les jours de tolérance</translation>
    </message>
    <message>
        <source>the day to report by</source>
        <translation>le jour limite de transmission</translation>
    </message>
    <message>
        <source>the time to report by</source>
        <translation>l’heure limite de transmission</translation>
    </message>
    <message>
        <source>the season</source>
        <translation>la saison</translation>
    </message>
    <message>
        <source>the version</source>
        <translation>la version</translation>
    </message>
    <message>
        <source>the role</source>
        <translation>le rôle</translation>
    </message>
    <message>
        <source>the district</source>
        <translation>le district</translation>
    </message>
    <message>
        <source>whose field it is</source>
        <translation>à qui est le champ</translation>
    </message>
    <message>
        <source>the field</source>
        <translation>le champ</translation>
    </message>
    <message>
        <source>the crop</source>
        <translation>la culture</translation>
    </message>
    <message>
        <source>the landowner</source>
        <translation>le propriétaire du terrain</translation>
    </message>
    <message>
        <source>the day the landowner said yes</source>
        <translation>le jour de l’accord du propriétaire</translation>
    </message>
    <message>
        <source>the way in</source>
        <translation>l’accès</translation>
    </message>
    <message>
        <source>the day of seeding</source>
        <translation>le jour du semis</translation>
    </message>
    <message>
        <source>the site</source>
        <translation>le site</translation>
    </message>
    <message>
        <source>the tag</source>
        <translation>l’étiquette</translation>
    </message>
    <message>
        <source>the version of the protocol</source>
        <translation>la version du protocole</translation>
    </message>
    <message>
        <source>the trap type</source>
        <translation>le type de piège</translation>
    </message>
    <message>
        <source>the day of set-up</source>
        <translation>le jour de l’installation</translation>
    </message>
    <message>
        <source>the time of set-up</source>
        <translation>l’heure de l’installation</translation>
    </message>
    <message>
        <source>the time zone</source>
        <translation>le fuseau horaire</translation>
    </message>
    <message>
        <source>the latitude</source>
        <translation>la latitude</translation>
    </message>
    <message>
        <source>the longitude</source>
        <translation>la longitude</translation>
    </message>
    <message>
        <source>the accuracy of the position</source>
        <translation>la précision de la position</translation>
    </message>
    <message>
        <source>how the position was found</source>
        <translation>l’origine de la position</translation>
    </message>
    <message>
        <source>the time of the position</source>
        <translation>l’heure de la position</translation>
    </message>
    <message>
        <source>the number of fixes</source>
        <translation>le nombre de positions</translation>
    </message>
    <message>
        <source>whether the trap is clean</source>
        <translation>si le piège est propre</translation>
    </message>
    <message>
        <source>whether the lure reminder was read</source>
        <translation>si le rappel sur la phéromone a été lu</translation>
    </message>
    <message>
        <source>whether the lure is in</source>
        <translation>si la phéromone est en place</translation>
    </message>
    <message>
        <source>the lot of the lure</source>
        <translation>le lot de la phéromone</translation>
    </message>
    <message>
        <source>the expiry day of the lure</source>
        <translation>le jour d’expiration de la phéromone</translation>
    </message>
    <message>
        <source>whether the killing strip is in</source>
        <translation>si la plaquette insecticide est en place</translation>
    </message>
    <message>
        <source>the height of the entrance</source>
        <translation>la hauteur de l’entrée</translation>
    </message>
    <message>
        <source>the height of the canopy</source>
        <translation>la hauteur du couvert</translation>
    </message>
    <message>
        <source>the height rule</source>
        <translation>la règle de hauteur</translation>
    </message>
    <message>
        <source>the distance to the field edge</source>
        <translation>la distance au bord du champ</translation>
    </message>
    <message>
        <source>the distance to the farmyard</source>
        <translation>la distance à la cour de ferme</translation>
    </message>
    <message>
        <source>the distance to a strong light</source>
        <translation>la distance à une lumière vive</translation>
    </message>
    <message>
        <source>the photograph</source>
        <translation>la photo</translation>
    </message>
    <message>
        <source>the day the trap was taken down</source>
        <translation>le jour du retrait du piège</translation>
    </message>
    <message>
        <source>why the trap ended</source>
        <translation>la raison de la fin du piège</translation>
    </message>
    <message>
        <source>the trap beside it</source>
        <translation>le piège voisin</translation>
    </message>
    <message>
        <source>the trap it replaces</source>
        <translation>le piège qu’il remplace</translation>
    </message>
    <message>
        <source>whether the lure was taken out</source>
        <translation>si la phéromone a été enlevée</translation>
    </message>
    <message>
        <source>whether the killing strip was taken out</source>
        <translation>si la plaquette insecticide a été enlevée</translation>
    </message>
    <message>
        <source>whether the spare lures are frozen</source>
        <translation>si les phéromones de réserve sont congelées</translation>
    </message>
    <message>
        <source>the visit</source>
        <translation>la visite</translation>
    </message>
    <message>
        <source>the trap</source>
        <translation>le piège</translation>
    </message>
    <message>
        <source>the remark</source>
        <translation>la remarque</translation>
    </message>
    <message>
        <source>the day</source>
        <translation>le jour</translation>
    </message>
    <message>
        <source>the time</source>
        <translation>l’heure</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>who borrows the trap</source>
        <translation>qui emprunte le piège</translation>
    </message>
    <message>
        <source>the first day</source>
        <translation>le premier jour</translation>
    </message>
    <message>
        <source>the last day</source>
        <translation>le dernier jour</translation>
    </message>
    <message>
        <source>who counted</source>
        <translation>qui a fait le relevé</translation>
    </message>
    <message>
        <source>whether it was counted</source>
        <translation>si le relevé a été fait</translation>
    </message>
    <message>
        <source>why it could not be counted</source>
        <translation>pourquoi le relevé était impossible</translation>
    </message>
    <message>
        <source>the number of bees</source>
        <translation>le nombre d’abeilles</translation>
    </message>
    <message>
        <source>how it was counted</source>
        <translation>la méthode de comptage</translation>
    </message>
    <message>
        <source>the counts of the parts</source>
        <translation>les nombres des parties</translation>
    </message>
    <message>
        <source>the amounts of the parts</source>
        <translation>les quantités des parties</translation>
    </message>
    <message>
        <source>the amount of the whole catch</source>
        <translation>la quantité de la capture entière</translation>
    </message>
    <message>
        <source>the low end of the count</source>
        <translation>le bas de l’intervalle du nombre</translation>
    </message>
    <message>
        <source>the high end of the count</source>
        <translation>le haut de l’intervalle du nombre</translation>
    </message>
    <message>
        <source>whether the trap was emptied</source>
        <translation>si le piège a été vidé</translation>
    </message>
    <message>
        <source>the state</source>
        <translation>l’état</translation>
    </message>
    <message>
        <source>whether the count is “at least”</source>
        <translation>si le nombre est un «&#xa0;au moins&#xa0;»</translation>
    </message>
    <message>
        <source>whether the field was sprayed</source>
        <translation>si le champ a été traité</translation>
    </message>
    <message>
        <source>what was sprayed</source>
        <translation>le produit appliqué</translation>
    </message>
    <message>
        <source>the day of spraying</source>
        <translation>le jour du traitement</translation>
    </message>
    <message>
        <source>the re-entry time</source>
        <translation>le délai de réentrée</translation>
    </message>
    <message>
        <source>whether the lure is there</source>
        <translation>si la phéromone est là</translation>
    </message>
    <message>
        <source>whether the killing strip is there</source>
        <translation>si la plaquette insecticide est là</translation>
    </message>
    <message>
        <source>whether moths were alive</source>
        <translation>si des papillons étaient vivants</translation>
    </message>
    <message>
        <source>whether flowering is over</source>
        <translation>si la floraison est terminée</translation>
    </message>
    <message>
        <source>the number of the sample</source>
        <translation>le numéro de l’échantillon</translation>
    </message>
    <message>
        <source>the day it was kept</source>
        <translation>le jour où il a été conservé</translation>
    </message>
    <message>
        <source>the day it was sent</source>
        <translation>le jour de l’envoi</translation>
    </message>
    <message>
        <source>the day it was received</source>
        <translation>le jour de la réception</translation>
    </message>
    <message>
        <source>the day it was named</source>
        <translation>le jour de l’identification</translation>
    </message>
    <message>
        <source>where it was sent</source>
        <translation>où il a été envoyé</translation>
    </message>
    <message>
        <source>who named it</source>
        <translation>qui l’a identifié</translation>
    </message>
    <message>
        <source>what it was named</source>
        <translation>le nom trouvé à l’identification</translation>
    </message>
    <message>
        <source>the catch</source>
        <translation>la capture</translation>
    </message>
    <message>
        <source>the number of traps</source>
        <translation>le nombre de pièges</translation>
    </message>
    <message>
        <source>the number of seasons</source>
        <translation>le nombre de saisons</translation>
    </message>
    <message>
        <source>the seed</source>
        <translation>la graine aléatoire</translation>
    </message>
    <message>
        <source>the pest</source>
        <translation>le ravageur</translation>
    </message>
    <message>
        <source>how many of them are the pest</source>
        <translation>combien sont le ravageur</translation>
    </message>
    <message>
        <source>the crop stage (BBCH)</source>
        <translation>le stade de la culture (BBCH)</translation>
    </message>
    <message>
        <source>the area of the frame</source>
        <translation>la surface du cadre</translation>
    </message>
    <message>
        <source>whether the walk is finished</source>
        <translation>si la tournée de dépistage est terminée</translation>
    </message>
    <message>
        <source>the scouting walk</source>
        <translation>la tournée de dépistage</translation>
    </message>
    <message>
        <source>the stop in the field</source>
        <translation>l’arrêt dans le champ</translation>
    </message>
    <message>
        <source>the number of larvae</source>
        <translation>le nombre de larves</translation>
    </message>
    <message>
        <source>the larvae by size</source>
        <translation>les larves par taille</translation>
    </message>
    <message>
        <source>the number of sick larvae</source>
        <translation>le nombre de larves malades</translation>
    </message>
    <message>
        <source>the pods looked at</source>
        <translation>les siliques examinées</translation>
    </message>
    <message>
        <source>the pods damaged</source>
        <translation>les siliques endommagées</translation>
    </message>
    <message>
        <source>the cost of control</source>
        <translation>le coût du traitement</translation>
    </message>
    <message>
        <source>the cost of the product</source>
        <translation>le coût du produit</translation>
    </message>
    <message>
        <source>the cost of the application</source>
        <translation>le coût de l’application</translation>
    </message>
    <message>
        <source>the cost of the wheel tracks</source>
        <translation>le coût des traces de roues</translation>
    </message>
    <message>
        <source>the unit of the cost</source>
        <translation>l’unité du coût</translation>
    </message>
    <message>
        <source>the price of the harvest</source>
        <translation>le prix de la récolte</translation>
    </message>
    <message>
        <source>the unit of the price</source>
        <translation>l’unité du prix</translation>
    </message>
    <message>
        <source>the divisor for a dry season</source>
        <translation>le diviseur pour une saison sèche</translation>
    </message>
    <message>
        <source>the days of the label before harvest</source>
        <translation>les jours de l’étiquette avant récolte</translation>
    </message>
    <message>
        <source>the day of cutting</source>
        <translation>le jour de la coupe</translation>
    </message>
    <message>
        <source>the verdict that was shown</source>
        <translation>le verdict affiché</translation>
    </message>
    <message>
        <source>what was decided</source>
        <translation>la décision prise</translation>
    </message>
    <message>
        <source>the day to look again</source>
        <translation>le jour du nouvel examen</translation>
    </message>
    <message>
        <source>the number of frames</source>
        <translation>le nombre de cadres</translation>
    </message>
    <message>
        <source>the number of stops</source>
        <translation>le nombre d’arrêts</translation>
    </message>
    <message>
        <source>the threshold</source>
        <translation>le seuil</translation>
    </message>
    <message>
        <source>the density</source>
        <translation>la densité</translation>
    </message>
    <message>
        <source>the dispersion</source>
        <translation>la dispersion</translation>
    </message>
    <message>
        <source>the ratio</source>
        <translation>le rapport</translation>
    </message>
    <message>
        <source>the share of wrong calls</source>
        <translation>la part de jugements erronés</translation>
    </message>
    <message>
        <source>the mean</source>
        <translation>la moyenne</translation>
    </message>
    <message>
        <source>the precision</source>
        <translation>la précision</translation>
    </message>
    <message>
        <source>the cost on an acre</source>
        <translation>le coût à l’acre</translation>
    </message>
    <message>
        <source>the cost on a hectare</source>
        <translation>le coût à l’hectare</translation>
    </message>
    <message>
        <source>the price of a bushel</source>
        <translation>le prix du boisseau</translation>
    </message>
    <message>
        <source>the price of a tonne</source>
        <translation>le prix de la tonne</translation>
    </message>
    <message>
        <source>the dry-season divisor</source>
        <translation>le diviseur de saison sèche</translation>
    </message>
    <message>
        <source>the share of damaged pods</source>
        <translation>la part de siliques endommagées</translation>
    </message>
    <message>
        <source>the days before harvest on the label</source>
        <translation>les jours avant récolte selon l’étiquette</translation>
    </message>
    <message>
        <source>“infested”</source>
        <translation>«&#xa0;infesté&#xa0;»</translation>
    </message>
    <message>
        <source>the way of measuring</source>
        <translation>la façon de mesurer</translation>
    </message>
    <message>
        <source>whether the season is dry</source>
        <translation>si la saison est sèche</translation>
    </message>
    <message>
        <source>the member</source>
        <translation>le membre</translation>
    </message>
    <message>
        <source>the code</source>
        <translation>le code</translation>
    </message>
    <message>
        <source>the folder</source>
        <translation>le dossier</translation>
    </message>
    <message>
        <source>the file</source>
        <translation>le fichier</translation>
    </message>
    <message>
        <source>the address of the hub</source>
        <translation>l’adresse du serveur</translation>
    </message>
    <message>
        <source>the number of the device</source>
        <translation>le numéro de l’appareil</translation>
    </message>
    <message>
        <source>the public key</source>
        <translation>la clé publique</translation>
    </message>
    <message>
        <source>the name of the device</source>
        <translation>le nom de l’appareil</translation>
    </message>
    <message>
        <source>whether it may name coordinators</source>
        <translation>si l’appareil peut nommer des coordonnateurs</translation>
    </message>
    <message>
        <source>the last change of it that counts</source>
        <translation>la dernière de ses modifications qui compte</translation>
    </message>
    <message>
        <source>the invitation</source>
        <translation>l’invitation</translation>
    </message>
    <message>
        <source>the proof of the invitation</source>
        <translation>la preuve de l’invitation</translation>
    </message>
    <message>
        <source>the key it goes on from</source>
        <translation>la clé dont il prend la suite</translation>
    </message>
    <message>
        <source>the record</source>
        <translation>l’enregistrement</translation>
    </message>
    <message>
        <source>whether the record stands</source>
        <translation>si l’enregistrement est maintenu</translation>
    </message>
    <message>
        <source>the change</source>
        <translation>la modification</translation>
    </message>
    <message>
        <source>why it is left out of the picture</source>
        <translation>pourquoi il est écarté de l’ensemble</translation>
    </message>
    <message>
        <source>how it was reported</source>
        <translation>le mode de transmission</translation>
    </message>
    <message>
        <source>the week</source>
        <translation>la semaine</translation>
    </message>
    <message>
        <source>the issue</source>
        <translation>l’édition</translation>
    </message>
    <message>
        <source>when it was published</source>
        <translation>le moment de la publication</translation>
    </message>
    <message>
        <source>the language</source>
        <translation>la langue</translation>
    </message>
    <message>
        <source>the title</source>
        <translation>le titre</translation>
    </message>
    <message>
        <source>the text</source>
        <translation>le texte</translation>
    </message>
    <message>
        <source>the figures of the districts</source>
        <translation>les chiffres des districts</translation>
    </message>
    <message>
        <source>whether the member goes on</source>
        <translation>si le membre continue</translation>
    </message>
    <message>
        <source>the question</source>
        <translation>la question</translation>
    </message>
    <message>
        <source>the words</source>
        <translation>les mots</translation>
    </message>
    <message>
        <source>whether it is settled</source>
        <translation>si elle est réglée</translation>
    </message>
    <message>
        <source>what was answered</source>
        <translation>la réponse donnée</translation>
    </message>
    <message>
        <source>the count of the pest</source>
        <translation>le nombre de ravageurs</translation>
    </message>
    <message>
        <source>whether the trap was washed</source>
        <translation>si le piège a été lavé</translation>
    </message>
    <message>
        <source>the count of other kinds</source>
        <translation>le nombre d’autres espèces</translation>
    </message>
    <message>
        <source>the count nobody is sure of</source>
        <translation>le nombre d’incertains</translation>
    </message>
    <message>
        <source>the number in the sample</source>
        <translation>le nombre dans l’échantillon</translation>
    </message>
    <message>
        <source>the number of nights</source>
        <translation>le nombre de nuits</translation>
    </message>
    <message>
        <source>the column</source>
        <translation>la colonne</translation>
    </message>
    <message>
        <source>the unit</source>
        <translation>l’unité</translation>
    </message>
    <message>
        <source>the encoding</source>
        <translation>le codage</translation>
    </message>
    <message>
        <source>the delimiter</source>
        <translation>le séparateur</translation>
    </message>
    <message>
        <source>the order of day and month</source>
        <translation>l’ordre du jour et du mois</translation>
    </message>
    <message>
        <source>the decimal mark</source>
        <translation>le signe décimal</translation>
    </message>
    <message>
        <source>when its day ends</source>
        <translation>la fin de sa journée</translation>
    </message>
    <message>
        <source>the weather station</source>
        <translation>la station météo</translation>
    </message>
    <message>
        <source>the lowest temperature</source>
        <translation>la température la plus basse</translation>
    </message>
    <message>
        <source>the highest temperature</source>
        <translation>la température la plus haute</translation>
    </message>
    <message>
        <source>the lower limit</source>
        <translation>la limite inférieure</translation>
    </message>
    <message>
        <source>the upper limit</source>
        <translation>la limite supérieure</translation>
    </message>
    <message>
        <source>the cut-off</source>
        <translation>la coupure</translation>
    </message>
    <message>
        <source>the method</source>
        <translation>la méthode</translation>
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
        <translation>Reprise là où cette installation s’est arrêtée.</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>The trap stands in</source>
        <translation>Le piège est dans</translation>
    </message>
    <message>
        <source>a new field</source>
        <translation>un nouveau champ</translation>
    </message>
    <message>
        <source>a field of this season</source>
        <translation>un champ de cette saison</translation>
    </message>
    <message>
        <source>Find a field</source>
        <translation>Trouver un champ</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>choisi</translation>
    </message>
    <message>
        <source>Name of the field</source>
        <translation>Nom du champ</translation>
    </message>
    <message>
        <source>As it shall stand on every list.</source>
        <translation>Tel qu’il figurera sur toutes les listes.</translation>
    </message>
    <message>
        <source>What people here call it, or its land description</source>
        <translation>Son nom d’usage ici, ou la désignation du terrain</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Peut rester vide.</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Culture</translation>
    </message>
    <message>
        <source>District</source>
        <translation>District</translation>
    </message>
    <message>
        <source>Seeded on</source>
        <translation>Semis le</translation>
    </message>
    <message>
        <source>Not needed; it helps to foresee the crop stage.</source>
        <translation>Facultatif&#xa0;; cela aide à prévoir le stade de la culture.</translation>
    </message>
</context>
<context>
    <name>FieldPath</name>
    <message>
        <source>Choose a folder</source>
        <translation>Choisir un dossier</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Choisir un fichier</translation>
    </message>
</context>
<context>
    <name>FieldRule</name>
    <message>
        <source>%1: %2 (%3)</source>
        <extracomment>where a rule was published, what it says, its source</extracomment>
        <translation>%1&#xa0;: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>from %1 of the plants, the visits added up.</source>
        <translation>à partir de %1 des plantes, visites additionnées.</translation>
    </message>
    <message>
        <source>from %1 of the plants.</source>
        <translation>à partir de %1 des plantes.</translation>
    </message>
    <message>
        <source>Look at %1 plants at each of %2 stops.</source>
        <translation>Examinez %1 plantes à chacun des %2 arrêts.</translation>
    </message>
    <message>
        <source>from %1 larvae on a square foot.</source>
        <translation>à partir de %1 larves au pied carré.</translation>
    </message>
    <message>
        <source>from %1 larvae on a square metre.</source>
        <translation>à partir de %1 larves au mètre carré.</translation>
    </message>
    <message>
        <source>Those longer than %1 are not counted.</source>
        <translation>Celles de plus de %1 ne sont pas comptées.</translation>
    </message>
    <message>
        <source>Parasitised ones are left out.</source>
        <translation>Les larves parasitées sont écartées.</translation>
    </message>
    <message>
        <source>what control saves is weighed against its cost, from the %1.</source>
        <translation>ce que le traitement sauve est comparé à son coût, d’après&#xa0;: %1.</translation>
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
        <translation>Seuils pour lesquels il a été publié</translation>
    </message>
    <message>
        <source>In the money of</source>
        <translation>Monnaie</translation>
    </message>
    <message>
        <source>Years of the trials</source>
        <translation>Années des essais</translation>
    </message>
    <message>
        <source>Varieties in the trials</source>
        <translation>Variétés des essais</translation>
    </message>
    <message>
        <source>A finding</source>
        <translation>Un résultat</translation>
    </message>
    <message>
        <source>Crop stage for control</source>
        <translation>Stade de la culture pour le traitement</translation>
    </message>
    <message>
        <source>Larvae of the size to control, at least</source>
        <translation>Larves à la taille à combattre, au moins</translation>
    </message>
    <message>
        <source>Be ready for larvae of</source>
        <translation>Se préparer aux larves de</translation>
    </message>
    <message>
        <source>Decide before this share of the pods is damaged</source>
        <translation>Décider avant cette part de siliques endommagées</translation>
    </message>
    <message>
        <source>Grade was lost from a share of damaged pods of</source>
        <translation>Déclassement dès une part de siliques endommagées de</translation>
    </message>
    <message>
        <source>Look again after</source>
        <translation>Réexaminer après</translation>
    </message>
    <message>
        <source>Canadian dollars</source>
        <translation>dollars canadiens</translation>
    </message>
    <message>
        <source>United States dollars</source>
        <translation>dollars américains</translation>
    </message>
    <message>
        <source>What it catches</source>
        <translation>Ce qu’il capture</translation>
    </message>
    <message>
        <source>From moth to larva</source>
        <translation>Du papillon à la larve</translation>
    </message>
    <message>
        <source>Above the upper limit</source>
        <translation>Au-dessus de la limite supérieure</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>What is expected of a flight</source>
        <translation>Ce qu’on attend d’un vol</translation>
    </message>
    <message>
        <source>Half of it is over on</source>
        <translation>La moitié est passée le</translation>
    </message>
    <message>
        <source>That day differs by about</source>
        <translation>Ce jour varie d’environ</translation>
    </message>
    <message>
        <source>It is as wide as</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Classes</translation>
    </message>
    <message>
        <source>How to read it</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>Catch of</source>
        <translation>Captures en</translation>
    </message>
    <message>
        <source>Weighed at</source>
        <translation>Moment de l’évaluation</translation>
    </message>
    <message>
        <source>the peak of the flight</source>
        <translation>le pic du vol</translation>
    </message>
    <message>
        <source>half of the flight</source>
        <translation>la moitié du vol</translation>
    </message>
    <message>
        <source>Within</source>
        <translation>En</translation>
    </message>
    <message>
        <source>On each visit at least</source>
        <translation>À chaque visite, au moins</translation>
    </message>
    <message>
        <source>Visits in a row</source>
        <translation>Visites de suite</translation>
    </message>
    <message>
        <source>A visit covers</source>
        <translation>Une visite couvre</translation>
    </message>
    <message>
        <source>Share of the plants</source>
        <translation>Part des plantes</translation>
    </message>
    <message>
        <source>Visits are added up</source>
        <translation>Les visites sont additionnées</translation>
    </message>
    <message>
        <source>Plants at a stop</source>
        <translation>Plantes par arrêt</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Arrêts</translation>
    </message>
    <message>
        <source>Larvae</source>
        <translation>Larves</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Sur</translation>
    </message>
    <message>
        <source>a square foot</source>
        <translation>un pied carré</translation>
    </message>
    <message>
        <source>a square metre</source>
        <translation>un mètre carré</translation>
    </message>
    <message>
        <source>Longest larva counted</source>
        <translation>Plus longue larve comptée</translation>
    </message>
    <message>
        <source>Parasitised larvae are left out</source>
        <translation>Les larves parasitées sont écartées</translation>
    </message>
    <message>
        <source>Borers for each found (%1)</source>
        <translation>Foreurs par unité trouvée (%1)</translation>
    </message>
    <message>
        <source>Share of the yield lost to one borer on a plant</source>
        <translation>Part du rendement perdue pour un foreur par plante</translation>
    </message>
    <message>
        <source>Share of the borers that control reaches</source>
        <translation>Part des foreurs que le traitement atteint</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>%1 between sprays</source>
        <translation>%1 entre les traitements</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Ce que cela signifie</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Rules that this version does not understand</source>
        <translation>Règles que cette version ne comprend pas</translation>
    </message>
    <message>
        <source>shape “%1”</source>
        <translation>forme «&#xa0;%1&#xa0;»</translation>
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
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 in %2, or %3 in 7</source>
        <translation>%1 en %2, soit %3 en 7</translation>
    </message>
    <message>
        <source>%1; the %2 traps around it caught %3 in 7 nights for the same week, from which about %4 were to be expected.</source>
        <extracomment>&quot;47 moths in 7 nights&quot;; a number of traps; &quot;5, 7, 3&quot;; a number of moths</extracomment>
        <translation>%1&#xa0;; les %2 pièges autour ont pris %3 en 7 nuits la même semaine, ce qui en laissait attendre environ %4.</translation>
    </message>
    <message>
        <source>A visit without a count names a trap that is not here.</source>
        <translation>Une visite sans nombre nomme un piège qui n’est pas ici.</translation>
    </message>
    <message>
        <source>A count of %1 names a trap that is not here.</source>
        <translation>Un relevé de %1 nomme un piège qui n’est pas ici.</translation>
    </message>
    <message>
        <source>%1 traps, %2 from one to the next by straight lines, are noted within %3 by one person; at 130 km/h the way takes %4.</source>
        <translation>%1 pièges, à %2 l’un de l’autre en ligne droite, sont notés en %3 par une seule personne&#xa0;; à 130 km/h, le trajet prend %4.</translation>
    </message>
    <message>
        <source>In the future</source>
        <translation>Dans l’avenir</translation>
    </message>
    <message>
        <source>Before set-up</source>
        <translation>Avant l’installation</translation>
    </message>
    <message>
        <source>After take-down</source>
        <translation>Après le retrait</translation>
    </message>
    <message>
        <source>Without a trap</source>
        <translation>Sans piège</translation>
    </message>
    <message>
        <source>Perhaps entered twice</source>
        <translation>Peut-être saisi deux fois</translation>
    </message>
    <message>
        <source>Second count of a day</source>
        <translation>Deuxième relevé d’un jour</translation>
    </message>
    <message>
        <source>After another trap took its place</source>
        <translation>Après le remplacement du piège</translation>
    </message>
    <message>
        <source>Fewer than before</source>
        <translation>Moins qu’avant</translation>
    </message>
    <message>
        <source>Long since emptied</source>
        <translation>Pas vidé depuis longtemps</translation>
    </message>
    <message>
        <source>Away from the trap’s place</source>
        <translation>Loin de l’emplacement du piège</translation>
    </message>
    <message>
        <source>Faster than anybody drives</source>
        <translation>Plus vite qu’on ne roule</translation>
    </message>
    <message>
        <source>Far above the traps around</source>
        <translation>Bien au-dessus des pièges autour</translation>
    </message>
    <message>
        <source>Far below the traps around</source>
        <translation>Bien en dessous des pièges autour</translation>
    </message>
    <message>
        <source>Far above the visit before</source>
        <translation>Bien au-dessus de la visite d’avant</translation>
    </message>
    <message>
        <source>Very large catch</source>
        <translation>Très forte capture</translation>
    </message>
    <message>
        <source>Many counts end in 0 or 5</source>
        <translation>Beaucoup de nombres en 0 ou 5</translation>
    </message>
    <message>
        <source>The visit is dated %1 after today.</source>
        <translation>La date de la visite tombe %1 après aujourd’hui.</translation>
    </message>
    <message>
        <source>The visit is dated %1 before the trap was set up.</source>
        <translation>La date de la visite tombe %1 avant l’installation du piège.</translation>
    </message>
    <message>
        <source>The visit is dated %1 after the trap was taken down.</source>
        <translation>La date de la visite tombe %1 après le retrait du piège.</translation>
    </message>
    <message>
        <source>Two visits to this trap on this day both say %1.</source>
        <translation>Deux visites à ce piège ce jour-là indiquent toutes deux %1.</translation>
    </message>
    <message>
        <source>%1, though the trap was emptied earlier on that day, with %2.</source>
        <translation>%1, alors que le piège a été vidé plus tôt ce jour-là, avec %2.</translation>
    </message>
    <message>
        <source>The visit is dated %1 after another trap was set up in its stead.</source>
        <translation>La date de la visite tombe %1 après l’installation d’un autre piège à sa place.</translation>
    </message>
    <message>
        <source>%1, after %2 at the visit before, which did not empty the trap.</source>
        <translation>%1, après %2 à la visite d’avant, qui n’a pas vidé le piège.</translation>
    </message>
    <message>
        <source>The trap had not been emptied for %1.</source>
        <translation>Le piège n’avait pas été vidé depuis %1.</translation>
    </message>
    <message>
        <source>Noted %1 from the trap’s place; fixes within %2 and %3 explain up to %4.</source>
        <translation>Noté à %1 de l’emplacement du piège&#xa0;; des positions à %2 et %3 près en expliquent jusqu’à %4.</translation>
    </message>
    <message>
        <source>%1 in %2, after %3 in %4; it could not be held against traps around it.</source>
        <translation>%1 en %2, après %3 en %4&#xa0;; aucune comparaison avec des pièges autour n’était possible.</translation>
    </message>
    <message>
        <source>%1 at one visit, where every catch above %2 is asked about.</source>
        <translation>%1 en une visite&#xa0;; on pose la question pour toute capture au-dessus de %2.</translation>
    </message>
    <message>
        <source>No good count gets this flag while this device has the right day.</source>
        <translation>Aucun bon relevé ne reçoit ce signalement tant que la date de cet appareil est juste.</translation>
    </message>
    <message>
        <source>No good count gets this flag if the day of set-up is right.</source>
        <translation>Aucun bon relevé ne reçoit ce signalement si le jour de l’installation est juste.</translation>
    </message>
    <message>
        <source>No good count gets this flag if the day of take-down is right.</source>
        <translation>Aucun bon relevé ne reçoit ce signalement si le jour du retrait est juste.</translation>
    </message>
    <message>
        <source>No good count gets this flag if the other trap’s day of set-up is right.</source>
        <translation>Aucun bon relevé ne reçoit ce signalement si le jour d’installation de l’autre piège est juste.</translation>
    </message>
    <message>
        <source>Every good count gets this flag until its trap arrives.</source>
        <translation>Tout bon relevé reçoit ce signalement jusqu’à l’arrivée de son piège.</translation>
    </message>
    <message>
        <source>Every two good counts that are alike get this flag; it may be real.</source>
        <translation>Deux bons relevés pareils reçoivent toujours ce signalement&#xa0;; un relevé signalé peut être juste.</translation>
    </message>
    <message>
        <source>Every second good count of a day gets this flag; it may be real.</source>
        <translation>Tout bon deuxième relevé d’un jour reçoit ce signalement&#xa0;; un relevé signalé peut être juste.</translation>
    </message>
    <message>
        <source>Every good count below the one before gets this flag; it may be real.</source>
        <translation>Tout bon relevé inférieur au précédent reçoit ce signalement&#xa0;; un relevé signalé peut être juste.</translation>
    </message>
    <message>
        <source>Every good count over so many nights gets this flag; it may be real.</source>
        <translation>Tout bon relevé sur autant de nuits reçoit ce signalement&#xa0;; un relevé signalé peut être juste.</translation>
    </message>
    <message>
        <source>Good counts that are typed in later get this flag as well; they may be real.</source>
        <translation>De bons relevés saisis plus tard reçoivent aussi ce signalement&#xa0;; ils peuvent être justes.</translation>
    </message>
    <message>
        <source>At most 1 good fix in %1 gets this flag; it may be real.</source>
        <translation>Au plus 1 bonne position sur %1 reçoit ce signalement&#xa0;; elle peut être juste.</translation>
    </message>
    <message>
        <source>1 good count in %1 gets this flag; it may be real.</source>
        <translation>1 bon relevé sur %1 reçoit ce signalement&#xa0;; un relevé signalé peut être juste.</translation>
    </message>
    <message>
        <source>Nobody has measured how many good counts get this flag; it may be real.</source>
        <translation>Personne n’a mesuré combien de bons relevés reçoivent ce signalement&#xa0;; un relevé signalé peut être juste.</translation>
    </message>
    <message>
        <source>%1 in 7 nights, %2 away</source>
        <translation>%1 en 7 nuits, à %2</translation>
    </message>
    <message>
        <source>%1 of one person’s %2 counts of ten and more end in 0 or 5, where chance alone gives one in five.</source>
        <translation>Sur les nombres de dix et plus d’une même personne, %1 sur %2 finissent par 0 ou 5, alors que le hasard seul en donne un sur cinq.</translation>
    </message>
    <message>
        <source>1 person in %1 who counts one by one gets this flag; it may be real.</source>
        <translation>1 personne sur %1 qui compte un par un reçoit ce signalement&#xa0;; ses nombres peuvent être justes.</translation>
    </message>
</context>
<context>
    <name>FlightPart</name>
    <message>
        <source>Flight of</source>
        <translation>Vol de</translation>
    </message>
    <message>
        <source>This trap</source>
        <translation>Ce piège</translation>
    </message>
    <message>
        <source>District: %1</source>
        <translation>District&#xa0;: %1</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Selon</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>Degree-days</source>
        <translation>Degrés-jours</translation>
    </message>
    <message>
        <source>Working out the flight of all traps …</source>
        <translation>Calcul du vol de tous les pièges …</translation>
    </message>
    <message>
        <source>Inner band: half of all chances. Outer band: nine in ten. Hatched and dashed: after the last count, expected only.</source>
        <translation>Bande intérieure&#xa0;: la moitié des chances. Bande extérieure&#xa0;: neuf sur dix. Hachures et tirets&#xa0;: après le dernier relevé, attendu seulement.</translation>
    </message>
</context>
<context>
    <name>FrameExtras</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Pods, remark</source>
        <translation>Siliques, remarque</translation>
    </message>
    <message>
        <source>Pods looked at</source>
        <translation>Siliques examinées</translation>
    </message>
    <message>
        <source>Empty: none looked at</source>
        <translation>Vide&#xa0;: aucune examinée</translation>
    </message>
    <message>
        <source>Of these, damaged</source>
        <translation>Dont endommagées</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Sick: %1</source>
        <translation>Malades&#xa0;: %1</translation>
    </message>
    <message>
        <source>One sick</source>
        <translation>Une malade</translation>
    </message>
    <message>
        <source>Sick or parasitised: %1. One more.</source>
        <translation>Malades ou parasitées&#xa0;: %1. Une de plus.</translation>
    </message>
</context>
<context>
    <name>FrameTally</name>
    <message>
        <source>It is the same stop</source>
        <translation>C’est le même arrêt</translation>
    </message>
    <message>
        <source>Threshold and decision</source>
        <translation>Seuil et décision</translation>
    </message>
    <message>
        <source>Say what control costs</source>
        <translation>Indiquer le coût du traitement</translation>
    </message>
    <message>
        <source>Frames so far</source>
        <translation>Cadres jusqu’ici</translation>
    </message>
    <message>
        <source>Correct the walk, or see its history</source>
        <translation>Corriger la tournée de dépistage, ou voir son historique</translation>
    </message>
    <message>
        <source>Stop here: to the decision</source>
        <translation>Arrêter ici&#xa0;: vers la décision</translation>
    </message>
    <message>
        <source>Enough: to the decision</source>
        <translation>C’est assez&#xa0;: vers la décision</translation>
    </message>
    <message>
        <source>Same stop as the last frame</source>
        <translation>Même arrêt que le dernier cadre</translation>
    </message>
    <message>
        <source>Then the two count as one look at the field.</source>
        <translation>Les deux comptent alors comme un seul regard sur le champ.</translation>
    </message>
</context>
<context>
    <name>Frames</name>
    <message>
        <source>%1 stops</source>
        <translation>%1 arrêts</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <extracomment>&quot;6 stops with 9 frames&quot;</extracomment>
        <translation>%1 avec %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 (%4 a frame).</source>
        <extracomment>&quot;10 frames, 55 larvae: 22 larvae per m² (5.5 a frame).&quot;</extracomment>
        <translation>%1, %2&#xa0;: %3 (%4 par cadre).</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>moins de 1</translation>
    </message>
    <message>
        <source>Of 100 fields right at your threshold (%1)</source>
        <translation>Sur 100 champs juste à votre seuil (%1)</translation>
    </message>
    <message>
        <source>Of 100 fields at half your threshold (%1)</source>
        <translation>Sur 100 champs à la moitié de votre seuil (%1)</translation>
    </message>
    <message>
        <source>Of 100 fields a third below your threshold (%1)</source>
        <translation>Sur 100 champs un tiers sous votre seuil (%1)</translation>
    </message>
    <message>
        <source>Of 100 fields half as dense again as your threshold (%1)</source>
        <translation>Sur 100 champs à une fois et demie votre seuil (%1)</translation>
    </message>
    <message>
        <source>Of 100 fields at twice your threshold (%1)</source>
        <translation>Sur 100 champs au double de votre seuil (%1)</translation>
    </message>
    <message>
        <source>Of 100 fields with %1</source>
        <translation>Sur 100 champs avec %1</translation>
    </message>
    <message>
        <source>1 frame</source>
        <translation>1 cadre</translation>
    </message>
    <message>
        <source>%1 frames</source>
        <translation>%1 cadres</translation>
    </message>
    <message>
        <source>%1 larvae per m²</source>
        <translation>%1 larves par m²</translation>
    </message>
    <message>
        <source>No frame was counted.</source>
        <translation>Aucun cadre n’a été compté.</translation>
    </message>
    <message>
        <source>Too few to know how much the field varies, so there is no range. Count more frames.</source>
        <translation>Trop peu pour savoir combien le champ varie&#xa0;; il n’y a donc pas d’intervalle. Comptez plus de cadres.</translation>
    </message>
    <message>
        <source>None found: the field probably has fewer than %1, but not surely none.</source>
        <translation>Aucune trouvée&#xa0;: le champ a sans doute moins de %1, mais il y en a peut-être.</translation>
    </message>
    <message>
        <source>Too few frames for a useful range: it goes from %1 to %2 larvae per m².</source>
        <translation>Trop peu de cadres pour un intervalle utile&#xa0;: il va de %1 à %2 larves par m².</translation>
    </message>
    <message>
        <source>The whole field probably has between %1 and %2 larvae per m² (95 % range; approximate where a walk stopped early).</source>
        <translation>Le champ entier a sans doute entre %1 et %2 larves par m² (intervalle à 95&#xa0;%&#xa0;; approximatif si la tournée s’est arrêtée tôt).</translation>
    </message>
    <message>
        <source>The chance that the field has more than %1 is below 1 %.</source>
        <translation>La probabilité que le champ ait plus de %1 est inférieure à 1&#xa0;%.</translation>
    </message>
    <message>
        <source>The chance that the field has more than %1 is above 99 %.</source>
        <translation>La probabilité que le champ ait plus de %1 est supérieure à 99&#xa0;%.</translation>
    </message>
    <message>
        <source>The chance that the field has more than %1 is about %2 %.</source>
        <translation>La probabilité que le champ ait plus de %1 est d’environ %2&#xa0;%.</translation>
    </message>
    <message>
        <source>%1 after %2: far enough below the threshold to stop.</source>
        <translation>%1 après %2&#xa0;: assez loin sous le seuil pour s’arrêter.</translation>
    </message>
    <message>
        <source>%1 after %2: far enough above the threshold to stop.</source>
        <translation>%1 après %2&#xa0;: assez loin au-dessus du seuil pour s’arrêter.</translation>
    </message>
    <message>
        <source>After %1 the field is near the threshold. Look again in two or three days.</source>
        <translation>Après %1, le champ est près du seuil. Réexaminez dans deux ou trois jours.</translation>
    </message>
    <message>
        <source>Go on: the total is low, but the counts are so uneven that a patch may be missed.</source>
        <translation>Continuez&#xa0;: le total est bas, mais les nombres sont si inégaux qu’un foyer peut échapper.</translation>
    </message>
    <message>
        <source>Go on.</source>
        <translation>Continuez.</translation>
    </message>
    <message>
        <source>After %1 stop at %2 or fewer in all (below), or at %3 or more (above).</source>
        <translation>Après %1, arrêtez à %2 ou moins en tout (en dessous), ou à %3 ou plus (au-dessus).</translation>
    </message>
    <message>
        <source>After %1 stop at %2 or more in all (above); it is too early to stop below.</source>
        <translation>Après %1, arrêtez à %2 ou plus en tout (au-dessus)&#xa0;; il est trop tôt pour s’arrêter en dessous.</translation>
    </message>
    <message>
        <source>Below your threshold of %1.</source>
        <translation>Sous votre seuil de %1.</translation>
    </message>
    <message>
        <source>Above your threshold of %1.</source>
        <translation>Au-dessus de votre seuil de %1.</translation>
    </message>
    <message>
        <source>Too close to call at your threshold of %1 all the same: the counts are too uneven to trust the total. Count more frames.</source>
        <translation>Quand même trop près de votre seuil de %1 pour trancher&#xa0;: les nombres sont trop inégaux pour se fier au total. Comptez plus de cadres.</translation>
    </message>
    <message>
        <source>Too close to call at your threshold of %1.</source>
        <translation>Trop près de votre seuil de %1 pour trancher.</translation>
    </message>
    <message>
        <source>%1, about %2 are called below, %3 are called above and %4 stay open.</source>
        <extracomment>&quot;Of 100 fields a third below your threshold (13 larvae per m²), about 91 are called below, ...&quot;</extracomment>
        <translation>%1, environ %2 sont jugés en dessous, %3 au-dessus et %4 restent non tranchés.</translation>
    </message>
    <message>
        <source>A textbook range (Student’s t) would be %1 to %2 larvae per m². With so few and so uneven counts it holds the truth in 80 to 90 of 100 walks only, so it is not used here.</source>
        <translation>L’intervalle des manuels (t de Student) serait de %1 à %2 larves par m². Avec des nombres si rares et si inégaux, il ne contient la vraie valeur que dans 80 à 90 tournées sur 100&#xa0;; il n’est donc pas utilisé ici.</translation>
    </message>
    <message>
        <source>To know a mean of %1 a frame within 50 % takes about %2, within 25 % about %3 (95 %, as patchy as k = %4).</source>
        <translation>Pour connaître une moyenne de %1 par cadre à 50&#xa0;% près, il faut environ %2&#xa0;; à 25&#xa0;% près, environ %3 (95&#xa0;%, agrégation de k = %4).</translation>
    </message>
</context>
<context>
    <name>HandlingPage</name>
    <message>
        <source>Never with bare fingers</source>
        <translation>Jamais à doigts nus</translation>
    </message>
    <message>
        <source>With forceps, or tipped from its packet</source>
        <translation>Avec une pince, ou versée du sachet</translation>
    </message>
</context>
<context>
    <name>Heat</name>
    <message>
        <source>average, limits applied to the mean</source>
        <translation>moyenne, limites appliquées à la moyenne</translation>
    </message>
    <message>
        <source>average, limits applied to minimum and maximum first</source>
        <translation>moyenne, limites appliquées d’abord au minimum et au maximum</translation>
    </message>
    <message>
        <source>single triangle</source>
        <translation>triangle simple</translation>
    </message>
    <message>
        <source>double triangle</source>
        <translation>triangle double</translation>
    </message>
    <message>
        <source>single sine</source>
        <translation>sinus simple</translation>
    </message>
    <message>
        <source>double sine</source>
        <translation>sinus double</translation>
    </message>
    <message>
        <source>counts in full</source>
        <translation>compte en entier</translation>
    </message>
    <message>
        <source>counts as the limit does (horizontal cut-off)</source>
        <translation>compte comme la limite (coupure horizontale)</translation>
    </message>
    <message>
        <source>takes away as much as it lies above (intermediate cut-off)</source>
        <translation>retranche autant que le dépassement (coupure intermédiaire)</translation>
    </message>
    <message>
        <source>nothing counts (vertical cut-off)</source>
        <translation>rien ne compte (coupure verticale)</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 °F</source>
        <translation>%1 °F</translation>
    </message>
    <message>
        <source>%1 degree-days (°C)</source>
        <translation>%1 degrés-jours (°C)</translation>
    </message>
    <message>
        <source>%1 degree-days (°F)</source>
        <translation>%1 degrés-jours (°F)</translation>
    </message>
</context>
<context>
    <name>HeavyCatch</name>
    <message>
        <source>A heavy catch, from a counted part</source>
        <translation>Forte capture, d’après une partie comptée</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Mesure par</translation>
    </message>
    <message>
        <source>volume, ml</source>
        <translation>volume, ml</translation>
    </message>
    <message>
        <source>weight, g</source>
        <translation>masse, g</translation>
    </message>
    <message>
        <source>The whole catch, the counted parts included</source>
        <translation>Toute la capture, parties comptées comprises</translation>
    </message>
    <message>
        <source>Count another part</source>
        <translation>Compter une autre partie</translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation>Utiliser&#xa0;: %1</translation>
    </message>
    <message>
        <source>Use the estimate</source>
        <translation>Utiliser l’estimation</translation>
    </message>
    <message>
        <source>Take out the bees and other insects. Drain and dry the %1, mix them, then measure the whole and count a part of it.</source>
        <translation>Enlevez les abeilles et les autres insectes. Égouttez et séchez les %1, mélangez-les, puis mesurez le tout et comptez-en une partie.</translation>
    </message>
    <message>
        <source>%1 in the whole catch, an estimate</source>
        <translation>%1 dans toute la capture, estimation</translation>
    </message>
    <message>
        <source>%1: the whole and one part are needed</source>
        <translation>%1&#xa0;: il faut le tout et une partie</translation>
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
        <translation>Retiré</translation>
    </message>
    <message>
        <source>History, newest first</source>
        <translation>Historique, le plus récent d’abord</translation>
    </message>
    <message>
        <source>Nothing is ever deleted: a correction stands beside what it corrects.</source>
        <translation>Rien n’est jamais effacé&#xa0;: une correction figure à côté de ce qu’elle corrige.</translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Let it stand again</source>
        <translation>Rétablir</translation>
    </message>
</context>
<context>
    <name>HistoryCard</name>
    <message>
        <source>%1 %2</source>
        <comment>who, did what</comment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>Bring in past years</source>
        <translation>Importer les années passées</translation>
    </message>
    <message>
        <source>Records are being kept</source>
        <translation>Enregistrement des données en cours</translation>
    </message>
    <message>
        <source>A table as .csv, as every spreadsheet saves it: the names of the columns in the first row, a site, a day and the number caught in each row below; or one column for each day or week.</source>
        <translation>Un tableau .csv, comme tout tableur l’enregistre&#xa0;: les noms des colonnes dans la première ligne, puis un site, un jour et le nombre capturé dans chaque ligne&#xa0;; ou une colonne par jour ou par semaine.</translation>
    </message>
    <message>
        <source>The file</source>
        <translation>Le fichier</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tableaux (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Voir le contenu</translation>
    </message>
    <message>
        <source>The file is being read.</source>
        <translation>Lecture du fichier en cours.</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Choisir un autre fichier</translation>
    </message>
    <message>
        <source>Nothing is kept yet. Choose another file</source>
        <translation>Rien n’est encore enregistré. Choisir un autre fichier</translation>
    </message>
    <message>
        <source>To be said first</source>
        <translation>À préciser d’abord</translation>
    </message>
    <message>
        <source>What the columns hold</source>
        <translation>Contenu des colonnes</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Caractères</translation>
    </message>
    <message>
        <source>Between the columns</source>
        <translation>Entre les colonnes</translation>
    </message>
    <message>
        <source>Day or month first</source>
        <translation>Jour ou mois en premier</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Colonne %1</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>À créer&#xa0;: %1</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nouveau</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>Rows that are here already</source>
        <translation>Lignes déjà présentes</translation>
    </message>
    <message>
        <source>Rows said twice</source>
        <translation>Lignes en double</translation>
    </message>
    <message>
        <source>Traps without a day of set-up</source>
        <translation>Pièges sans jour d’installation</translation>
    </message>
    <message>
        <source>Rows refused</source>
        <translation>Lignes refusées</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>Names of new districts</source>
        <translation>Noms des nouveaux districts</translation>
    </message>
    <message>
        <source>Names of new sites</source>
        <translation>Noms des nouveaux sites</translation>
    </message>
</context>
<context>
    <name>ImportColumn</name>
    <message>
        <source>What %1 holds</source>
        <translation>Contenu&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ImportEarlier</name>
    <message>
        <source>Brought in on this device</source>
        <translation>Importé sur cet appareil</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Annuler l’importation</translation>
    </message>
    <message>
        <source>Take %1 back?</source>
        <translation>Annuler l’importation de %1&#xa0;?</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
</context>
<context>
    <name>ImportForm</name>
    <message>
        <source>Comma</source>
        <translation>Virgule</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>Point-virgule</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulation</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barre verticale</translation>
    </message>
    <message>
        <source>Day first</source>
        <translation>Jour en premier</translation>
    </message>
    <message>
        <source>Month first</source>
        <translation>Mois en premier</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Point</translation>
    </message>
    <message>
        <source>How the file is written</source>
        <translation>Comment le fichier est écrit</translation>
    </message>
    <message>
        <source>Which pest was counted?</source>
        <translation>Quel ravageur a été compté&#xa0;?</translation>
    </message>
    <message>
        <source>The year of all days, where the table does not say it</source>
        <translation>L’année de tous les jours, si le tableau ne la donne pas</translation>
    </message>
    <message>
        <source>Take this year</source>
        <translation>Prendre cette année</translation>
    </message>
    <message>
        <source>Were the traps emptied at each count?</source>
        <translation>Les pièges ont-ils été vidés à chaque relevé&#xa0;?</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>nobody knows</source>
        <translation>personne ne le sait</translation>
    </message>
</context>
<context>
    <name>ImportMakes</name>
    <message>
        <source>What would be made</source>
        <translation>Ce qui serait créé</translation>
    </message>
    <message>
        <source>Worth a look; these are brought in all the same</source>
        <translation>À regarder&#xa0;; importé quand même</translation>
    </message>
</context>
<context>
    <name>ImportText</name>
    <message>
        <source>Semicolon</source>
        <translation>Point-virgule</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulation</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barre verticale</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Virgule</translation>
    </message>
    <message>
        <source>%1, as you chose.</source>
        <translation>%1, selon votre choix.</translation>
    </message>
    <message>
        <source>Month first</source>
        <translation>Mois en premier</translation>
    </message>
    <message>
        <source>Day first</source>
        <translation>Jour en premier</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Point</translation>
    </message>
    <message>
        <source>%1, because the file begins with its mark.</source>
        <translation>%1, car le fichier commence par sa marque.</translation>
    </message>
    <message>
        <source>%1, because line %2 holds a letter that is no UTF-8.</source>
        <translation>%1, car la ligne %2 contient un caractère qui n’est pas de l’UTF-8.</translation>
    </message>
    <message>
        <source>%1, because every letter can be read so.</source>
        <translation>%1, car tous les caractères se lisent ainsi.</translation>
    </message>
    <message>
        <source>%1, because it makes %2 columns in %3 of the first %4 lines.</source>
        <translation>%1, car cela donne %2 colonnes dans %3 des %4 premières lignes.</translation>
    </message>
    <message>
        <source>None found: the first line is one column.</source>
        <translation>Aucun trouvé&#xa0;: la première ligne n’a qu’une colonne.</translation>
    </message>
    <message>
        <source>%1, because “%2” can be read no other way.</source>
        <translation>%1, car «&#xa0;%2&#xa0;» ne peut pas se lire autrement.</translation>
    </message>
    <message>
        <source>Not clear: “%1” begins with the day and “%2” with the month. Say which.</source>
        <translation>Pas clair&#xa0;: «&#xa0;%1&#xa0;» commence par le jour et «&#xa0;%2&#xa0;» par le mois. Précisez.</translation>
    </message>
    <message>
        <source>Not clear: “%1” may begin with the day or the month. Say which.</source>
        <translation>Pas clair&#xa0;: «&#xa0;%1&#xa0;» peut commencer par le jour ou le mois. Précisez.</translation>
    </message>
    <message>
        <source>Every date can be read in one way only.</source>
        <translation>Chaque jour est écrit sans ambiguïté.</translation>
    </message>
    <message>
        <source>%1, because of “%2”.</source>
        <translation>%1, à cause de «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>Not clear: there are both “%1” and “%2”. Say which.</source>
        <translation>Pas clair&#xa0;: il y a «&#xa0;%1&#xa0;» et «&#xa0;%2&#xa0;». Précisez.</translation>
    </message>
    <message>
        <source>None is needed: all numbers are whole.</source>
        <translation>Inutile&#xa0;: tous les nombres sont entiers.</translation>
    </message>
    <message>
        <source>kept out</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>by its name</source>
        <translation>d’après son nom</translation>
    </message>
    <message>
        <source>another column may be %1 as well</source>
        <translation>une autre colonne peut aussi être %1</translation>
    </message>
    <message>
        <source>as you chose</source>
        <translation>selon votre choix</translation>
    </message>
    <message>
        <source>its name is the day</source>
        <translation>son nom est le jour</translation>
    </message>
    <message>
        <source>its name is not known</source>
        <translation>nom inconnu</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Line %1, column “%2”: %3</source>
        <translation>Ligne %1, colonne «&#xa0;%2&#xa0;»&#xa0;: %3</translation>
    </message>
    <message>
        <source>Nobody knows. Counts are not added up: the higher of two stands, as a question.</source>
        <translation>Personne ne le sait. Les relevés ne sont pas additionnés&#xa0;: le plus élevé de deux est retenu, comme question.</translation>
    </message>
    <message>
        <source>Yes, where a row does not say otherwise: counts add up.</source>
        <translation>Oui, sauf indication contraire d’une ligne&#xa0;: les relevés s’additionnent.</translation>
    </message>
    <message>
        <source>No, where a row does not say otherwise: each count holds the one before it.</source>
        <translation>Non, sauf indication contraire d’une ligne&#xa0;: chaque relevé contient le précédent.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et %2 autres</translation>
    </message>
</context>
<context>
    <name>Invite</name>
    <message>
        <source>Invitation for %1</source>
        <translation>Invitation pour %1</translation>
    </message>
    <message>
        <source>Another device of %1</source>
        <translation>Un autre appareil de %1</translation>
    </message>
    <message>
        <source>Invite somebody</source>
        <translation>Inviter quelqu’un</translation>
    </message>
    <message>
        <source>The code is good once. It stands only here: hand it on before you leave this page.</source>
        <translation>Le code ne sert qu’une fois. Il ne s’affiche qu’ici&#xa0;: transmettez-le avant de quitter cette page.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Takes part as</source>
        <translation>Participe comme</translation>
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
        <source>The code is good until</source>
        <translation>Code valable jusqu’au</translation>
    </message>
    <message>
        <source>Once only. A code that was lost is replaced by a new one.</source>
        <translation>Une seule fois. Un code perdu est remplacé par un nouveau.</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copié</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Copier le texte</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>Courriel</translation>
    </message>
    <message>
        <source>Message</source>
        <translation>Message</translation>
    </message>
    <message>
        <source>Make the code</source>
        <translation>Créer le code</translation>
    </message>
    <message>
        <source>I have handed it on</source>
        <translation>Je l’ai transmis</translation>
    </message>
</context>
<context>
    <name>Join</name>
    <message>
        <source>Join by a code</source>
        <translation>Rejoindre avec un code</translation>
    </message>
    <message>
        <source>The coordinator gave you ten characters, or a text or picture that holds them.</source>
        <translation>La coordination vous a donné dix caractères, ou un texte ou une image qui les contient.</translation>
    </message>
    <message>
        <source>Code, or the text you were sent</source>
        <translation>Le code, ou le texte reçu</translation>
    </message>
    <message>
        <source>Such as 7K2QD-M4XWA. Capital letters and hyphens do not matter.</source>
        <translation>Par exemple 7K2QD-M4XWA. Majuscules et traits d’union sont sans importance.</translation>
    </message>
    <message>
        <source>Where is the programme?</source>
        <translation>Où est le programme&#xa0;?</translation>
    </message>
    <message>
        <source>at a hub</source>
        <translation>sur un serveur</translation>
    </message>
    <message>
        <source>in a folder</source>
        <translation>dans un dossier</translation>
    </message>
    <message>
        <source>in a file</source>
        <translation>dans un fichier</translation>
    </message>
    <message>
        <source>Address of the hub</source>
        <translation>Adresse du serveur</translation>
    </message>
    <message>
        <source>It is in the text and in the picture; else ask the coordinator.</source>
        <translation>Elle est dans le texte et dans l’image&#xa0;; sinon, demandez-la à la coordination.</translation>
    </message>
    <message>
        <source>The folder that you share with the others</source>
        <translation>Le dossier que vous partagez avec les autres</translation>
    </message>
    <message>
        <source>The file from the coordinator</source>
        <translation>Le fichier de la coordination</translation>
    </message>
    <message>
        <source>Its name ends in .dusk.</source>
        <translation>Son nom finit par .dusk.</translation>
    </message>
    <message>
        <source>Carried files (*.dusk)</source>
        <translation>Fichiers transportés (*.dusk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>What this device is called</source>
        <translation>Nom de cet appareil</translation>
    </message>
    <message>
        <source>The coordinator sees it beside your name, to tell your devices apart.</source>
        <translation>La coordination le voit à côté de votre nom, pour distinguer vos appareils.</translation>
    </message>
    <message>
        <source>Bring along what I kept alone</source>
        <translation>Apporter ce que j’ai enregistré jusqu’ici</translation>
    </message>
    <message>
        <source>%1, under your name. The present file stays as it is.</source>
        <translation>%1, sous votre nom. Le fichier actuel reste tel quel.</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Rejoindre</translation>
    </message>
</context>
<context>
    <name>KeptPage</name>
    <message>
        <source>The trap is kept on this device.</source>
        <translation>Le piège est enregistré sur cet appareil.</translation>
    </message>
    <message>
        <source>Another trap at this field</source>
        <translation>Un autre piège dans ce champ</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Delete the last digit</source>
        <translation>Effacer le dernier chiffre</translation>
    </message>
    <message>
        <source>Clear the number</source>
        <translation>Effacer le nombre</translation>
    </message>
    <message>
        <source>Digit %1</source>
        <translation>Chiffre %1</translation>
    </message>
    <message>
        <source>no number yet</source>
        <translation>aucun nombre encore</translation>
    </message>
</context>
<context>
    <name>KindName</name>
    <message>
        <source>programme</source>
        <translation>programme</translation>
    </message>
    <message>
        <source>season</source>
        <translation>saison</translation>
    </message>
    <message>
        <source>district</source>
        <translation>district</translation>
    </message>
    <message>
        <source>pest in use</source>
        <translation>ravageur suivi</translation>
    </message>
    <message>
        <source>protocol</source>
        <translation>protocole</translation>
    </message>
    <message>
        <source>member</source>
        <translation>membre</translation>
    </message>
    <message>
        <source>site</source>
        <translation>site</translation>
    </message>
    <message>
        <source>trap</source>
        <translation>piège</translation>
    </message>
    <message>
        <source>service</source>
        <translation>intervention</translation>
    </message>
    <message>
        <source>loan</source>
        <translation>prêt</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>visite</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>échantillon</translation>
    </message>
    <message>
        <source>scouting walk</source>
        <translation>tournée de dépistage</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>cadre</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>décision</translation>
    </message>
    <message>
        <source>device</source>
        <translation>appareil</translation>
    </message>
    <message>
        <source>invitation</source>
        <translation>invitation</translation>
    </message>
    <message>
        <source>assignment</source>
        <translation>affectation</translation>
    </message>
    <message>
        <source>ruling</source>
        <translation>arbitrage</translation>
    </message>
    <message>
        <source>admission</source>
        <translation>admission</translation>
    </message>
    <message>
        <source>question</source>
        <translation>question</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>réponse</translation>
    </message>
    <message>
        <source>weather station</source>
        <translation>station météo</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>bulletin</source>
        <translation>bulletin</translation>
    </message>
    <message>
        <source>word on next year</source>
        <translation>réponse pour l’an prochain</translation>
    </message>
    <message>
        <source>import</source>
        <translation>importation</translation>
    </message>
    <message>
        <source>column</source>
        <translation>colonne</translation>
    </message>
</context>
<context>
    <name>LarvaRuler</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Outlines of larvae, as long as in life: %1</source>
        <translation>Silhouettes de larves, en grandeur réelle&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 mm, drawn smaller</source>
        <translation>%1 mm, dessin réduit</translation>
    </message>
    <message>
        <source>%1 mm, life size</source>
        <translation>%1 mm, grandeur réelle</translation>
    </message>
</context>
<context>
    <name>Larvae</name>
    <message>
        <source>Larvae</source>
        <translation>Larves</translation>
    </message>
    <message>
        <source>No field was scouted yet</source>
        <translation>Aucun champ dépisté encore</translation>
    </message>
    <message>
        <source>Going on</source>
        <translation>En cours</translation>
    </message>
    <message>
        <source>Scouted</source>
        <translation>Dépistés</translation>
    </message>
    <message>
        <source>Scout a field</source>
        <translation>Dépister un champ</translation>
    </message>
    <message>
        <source>About two weeks after the highest catch, search frames for larvae. Each field stands here with what was found.</source>
        <translation>Environ deux semaines après la plus forte capture, cherchez les larves dans des cadres. Chaque champ figure ici avec ce qui y a été trouvé.</translation>
    </message>
    <message>
        <source>The protocols in use say nothing of walks with frames. What counts in the crop stands on the page of each trap’s season.</source>
        <translation>Les protocoles utilisés ne prévoient pas de tournée avec cadres. Ce qui se compte dans la culture figure à la page de saison de chaque piège.</translation>
    </message>
</context>
<context>
    <name>LastPage</name>
    <message>
        <source>You can keep the trap and do it later.</source>
        <translation>Vous pouvez conserver le piège et le faire plus tard.</translation>
    </message>
    <message>
        <source>Day of set-up</source>
        <translation>Jour d’installation</translation>
    </message>
    <message>
        <source>Photograph of the trap</source>
        <translation>Photo du piège</translation>
    </message>
    <message>
        <source>Another photograph</source>
        <translation>Une autre photo</translation>
    </message>
    <message>
        <source>Add a photograph</source>
        <translation>Ajouter une photo</translation>
    </message>
    <message>
        <source>Leave the photograph out</source>
        <translation>Enlever la photo</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>A photograph of the trap</source>
        <translation>Une photo du piège</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.heic)</source>
        <translation>Images (*.jpg *.jpeg *.png *.webp *.heic)</translation>
    </message>
</context>
<context>
    <name>LateCard</name>
    <message>
        <source>Nothing has come in. A message to send:</source>
        <translation>Aucun relevé reçu. Message à envoyer&#xa0;:</translation>
    </message>
    <message>
        <source>Write it as e-mail</source>
        <translation>Écrire un courriel</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copié</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Copier le texte</translation>
    </message>
</context>
<context>
    <name>LeaveOutSheet</name>
    <message>
        <source>Say why, in a few words: everybody who looks at this count reads it.</source>
        <translation>Dites pourquoi, en quelques mots&#xa0;: tous ceux qui consultent ce relevé le lisent.</translation>
    </message>
    <message>
        <source>Leave this count out of the picture?</source>
        <translation>Écarter ce relevé&#xa0;?</translation>
    </message>
    <message>
        <source>The visit stays as it is. Sums, seasons and the region leave its count out, and the nights before it are not known. You can let it count again.</source>
        <translation>La visite reste telle quelle. Les sommes, les saisons et la région écartent son relevé, et les nuits qui le précèdent sont inconnues. Vous pourrez le faire compter de nouveau.</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>For example: the trap lay on its side.</source>
        <translation>Par exemple&#xa0;: le piège était couché.</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>Do not leave it out</source>
        <translation>Ne pas écarter</translation>
    </message>
</context>
<context>
    <name>LifeAct</name>
    <message>
        <source>Keep it</source>
        <translation>Conserver</translation>
    </message>
    <message>
        <source>Done on</source>
        <translation>Fait le</translation>
    </message>
</context>
<context>
    <name>LifeEnd</name>
    <message>
        <source>End of the trap</source>
        <translation>Fin du piège</translation>
    </message>
    <message>
        <source>Found gone on</source>
        <translation>Disparition constatée le</translation>
    </message>
    <message>
        <source>Taken down on</source>
        <translation>Retiré le</translation>
    </message>
    <message>
        <source>The trap has ended: keep it</source>
        <translation>Le piège est terminé&#xa0;: conserver</translation>
    </message>
    <message>
        <source>No count today. Empty it and count a last time first?</source>
        <translation>Pas de relevé aujourd’hui. Le vider et faire d’abord un dernier relevé&#xa0;?</translation>
    </message>
    <message>
        <source>Count now</source>
        <translation>Faire le relevé</translation>
    </message>
    <message>
        <source>Why does it end?</source>
        <translation>Pourquoi se termine-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>Season over</source>
        <translation>Saison terminée</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdu</translation>
    </message>
    <message>
        <source>What it caught since the last count is gone with it: its total becomes “at least”.</source>
        <translation>Ce qu’il a pris depuis le dernier relevé est perdu avec lui&#xa0;: son total devient «&#xa0;au moins&#xa0;».</translation>
    </message>
    <message>
        <source>Done so far</source>
        <translation>Déjà fait</translation>
    </message>
    <message>
        <source>Lure out</source>
        <translation>Phéromone retirée</translation>
    </message>
    <message>
        <source>Sealed and taken away from the field, as its label says</source>
        <translation>Scellée et emportée hors du champ, selon son étiquette</translation>
    </message>
    <message>
        <source>Killing strip out</source>
        <translation>Plaquette insecticide retirée</translation>
    </message>
    <message>
        <source>With nitrile gloves, disposed of as its label says</source>
        <translation>Avec des gants de nitrile, éliminée selon son étiquette</translation>
    </message>
    <message>
        <source>Apart by species: a trap keeps the scent of its lure</source>
        <translation>Séparé par espèce&#xa0;: un piège garde l’odeur de sa phéromone</translation>
    </message>
    <message>
        <source>Spare lures frozen</source>
        <translation>Phéromones de réserve congelées</translation>
    </message>
    <message>
        <source>Sealed; leave it off when there are none</source>
        <translation>Scellées&#xa0;; ne cochez pas s’il n’y en a pas</translation>
    </message>
    <message>
        <source>Trap washed and stored</source>
        <translation>Piège lavé et rangé</translation>
    </message>
</context>
<context>
    <name>LifeLend</name>
    <message>
        <source>Lend the trap</source>
        <translation>Prêter le piège</translation>
    </message>
    <message>
        <source>From</source>
        <translation>À partir du</translation>
    </message>
    <message>
        <source>To whom?</source>
        <translation>À qui&#xa0;?</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’au</translation>
    </message>
    <message>
        <source>Then it is yours again. It may come back earlier.</source>
        <translation>Ensuite, il est de nouveau à vous. Il peut revenir plus tôt.</translation>
    </message>
    <message>
        <source>To one of the programme?</source>
        <translation>À un membre du programme&#xa0;?</translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation>quelqu’un d’autre</translation>
    </message>
    <message>
        <source>What they count there until then is theirs to report.</source>
        <translation>Les relevés faits d’ici là sont à transmettre par cette personne.</translation>
    </message>
</context>
<context>
    <name>LifeLure</name>
    <message>
        <source>Before you open the lure</source>
        <translation>Avant d’ouvrir la phéromone</translation>
    </message>
    <message>
        <source>New lure</source>
        <translation>Nouvelle phéromone</translation>
    </message>
    <message>
        <source>Never with bare fingers</source>
        <translation>Jamais à doigts nus</translation>
    </message>
    <message>
        <source>With forceps, or tipped from its packet</source>
        <translation>Avec une pince, ou versée du sachet</translation>
    </message>
    <message>
        <source>The trap cut open; the lure hangs in its basket under the lid</source>
        <translation>Le piège en coupe&#xa0;; la phéromone pend dans son panier sous le couvercle</translation>
    </message>
    <message>
        <source>The new lure, in its basket</source>
        <translation>La nouvelle phéromone, dans son panier</translation>
    </message>
    <message>
        <source>Lot on the packet</source>
        <translation>Lot sur le sachet</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Peut rester vide.</translation>
    </message>
    <message>
        <source>Use by, on the packet</source>
        <translation>Date limite, sur le sachet</translation>
    </message>
    <message>
        <source>I handle it like that</source>
        <translation>Je la manipule ainsi</translation>
    </message>
    <message>
        <source>The trap; its lure hangs inside</source>
        <translation>Le piège&#xa0;; sa phéromone pend à l’intérieur</translation>
    </message>
    <message>
        <source>The new lure, inside the trap</source>
        <translation>La nouvelle phéromone, dans le piège</translation>
    </message>
</context>
<context>
    <name>LifeMove</name>
    <message>
        <source>Move the trap</source>
        <translation>Déplacer le piège</translation>
    </message>
    <message>
        <source>metres: the new place is known this well</source>
        <translation>mètres&#xa0;: précision du nouvel emplacement</translation>
    </message>
    <message>
        <source>Waiting for the first fix, under the open sky</source>
        <translation>En attente d’une première position, à ciel ouvert</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>stable</translation>
    </message>
    <message>
        <source>still settling</source>
        <translation>pas encore stable</translation>
    </message>
    <message>
        <source>This device finds no position by itself. Type the coordinates, or name a position log in the settings.</source>
        <translation>Cet appareil ne trouve pas seul sa position. Saisissez les coordonnées, ou indiquez un journal de positions dans les réglages.</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitude</translation>
    </message>
    <message>
        <source>For example 52.15790</source>
        <translation>Par exemple 52.15790</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Longitude</translation>
    </message>
    <message>
        <source>West has a minus: -106.67020</source>
        <translation>L’ouest prend un moins&#xa0;: -106.67020</translation>
    </message>
    <message>
        <source>Measure instead</source>
        <translation>Mesurer plutôt</translation>
    </message>
    <message>
        <source>Type the coordinates instead</source>
        <translation>Saisir plutôt les coordonnées</translation>
    </message>
    <message>
        <source>Find the place again</source>
        <translation>Mesurer de nouveau l’emplacement</translation>
    </message>
    <message>
        <source>It stands here now</source>
        <translation>Il est ici maintenant</translation>
    </message>
</context>
<context>
    <name>LifeOfTrap</name>
    <message>
        <source>day not known</source>
        <translation>jour inconnu</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Déplacé</translation>
    </message>
    <message>
        <source>Moved %1</source>
        <translation>Déplacé de %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>use by %1</source>
        <translation>date limite&#xa0;: %1</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Intervention</translation>
    </message>
    <message>
        <source>Entrance set to %1</source>
        <translation>Entrée réglée à %1</translation>
    </message>
    <message>
        <source>Lent to %1</source>
        <translation>Prêté à %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>jusqu’au %1</translation>
    </message>
    <message>
        <source>lure out</source>
        <translation>retirer la phéromone</translation>
    </message>
    <message>
        <source>killing strip out</source>
        <translation>retirer la plaquette insecticide</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminés</translation>
    </message>
    <message>
        <source>Ended: %1</source>
        <translation>Terminé&#xa0;: %1</translation>
    </message>
    <message>
        <source>still to do: %1</source>
        <translation>reste à faire&#xa0;: %1</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>aucune mesure</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <translation>%1, le %2</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Installation</translation>
    </message>
    <message>
        <source>Trap</source>
        <translation>Piège</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Étiquette</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Champ</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Culture</translation>
    </message>
    <message>
        <source>Landowner’s yes</source>
        <translation>Accord du propriétaire</translation>
    </message>
    <message>
        <source>Way in</source>
        <translation>Accès</translation>
    </message>
    <message>
        <source>Entrance</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Canopy</source>
        <translation>Couvert</translation>
    </message>
    <message>
        <source>Lure lot</source>
        <translation>Lot de la phéromone</translation>
    </message>
    <message>
        <source>Lure use by</source>
        <translation>Date limite de la phéromone</translation>
    </message>
    <message>
        <source>trap washed and stored</source>
        <translation>laver et ranger le piège</translation>
    </message>
</context>
<context>
    <name>LifeOverview</name>
    <message>
        <source>Life of this trap</source>
        <translation>Vie de ce piège</translation>
    </message>
    <message>
        <source>It is back</source>
        <translation>Il est revenu</translation>
    </message>
    <message>
        <source>It still stands</source>
        <translation>Il est toujours en place</translation>
    </message>
    <message>
        <source>Raise it</source>
        <translation>Rehausser</translation>
    </message>
    <message>
        <source>New lure</source>
        <translation>Nouvelle phéromone</translation>
    </message>
    <message>
        <source>New strip</source>
        <translation>Nouvelle plaquette</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Déplacer</translation>
    </message>
    <message>
        <source>Lend it</source>
        <translation>Prêter</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Remplacer</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Installation</translation>
    </message>
    <message>
        <source>History of the field</source>
        <translation>Historique du champ</translation>
    </message>
    <message>
        <source>A new trap at the same spot?</source>
        <translation>Un nouveau piège au même endroit&#xa0;?</translation>
    </message>
    <message>
        <source>End this one, set up the new one</source>
        <translation>Terminer celui-ci, installer le nouveau</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Does it still stand in the field?</source>
        <translation>Est-il toujours dans le champ&#xa0;?</translation>
    </message>
    <message>
        <source>Then its end is taken back, and its counts go on. The history keeps both.</source>
        <translation>Sa fin est alors annulée et ses relevés continuent. L’historique garde les deux.</translation>
    </message>
    <message>
        <source>Yes, it still stands</source>
        <translation>Oui, il est toujours en place</translation>
    </message>
    <message>
        <source>No, it ended</source>
        <translation>Non, il est terminé</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Y mettre fin</translation>
    </message>
    <message>
        <source>Finish taking it down</source>
        <translation>Terminer le retrait</translation>
    </message>
    <message>
        <source>Correct the trap</source>
        <translation>Corriger le piège</translation>
    </message>
    <message>
        <source>Correct the field</source>
        <translation>Corriger le champ</translation>
    </message>
    <message>
        <source>This one ends today and keeps its count; the new one starts at zero. Count what is in it first.</source>
        <translation>Celui-ci se termine aujourd’hui et garde sa capture&#xa0;; le nouveau part de zéro. Comptez d’abord ce qu’il contient.</translation>
    </message>
</context>
<context>
    <name>LifeRaise</name>
    <message>
        <source>Raise the trap</source>
        <translation>Rehausser le piège</translation>
    </message>
    <message>
        <source>The trap on its stake: %1, %2. %3</source>
        <translation>Le piège sur son piquet&#xa0;: %1, %2. %3</translation>
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
        <translation>Nouvelle plaquette insecticide</translation>
    </message>
    <message>
        <source>The new strip is in: keep it</source>
        <translation>La nouvelle plaquette est en place&#xa0;: conserver</translation>
    </message>
    <message>
        <source>The trap cut open; the killing strip lies on the floor of the bucket</source>
        <translation>Le piège en coupe&#xa0;; la plaquette insecticide repose au fond du seau</translation>
    </message>
    <message>
        <source>The new strip, on the floor of the bucket</source>
        <translation>La nouvelle plaquette, au fond du seau</translation>
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
        <translation>La phéromone était là</translation>
    </message>
    <message>
        <source>I put in a new lure</source>
        <translation>J’ai mis une nouvelle phéromone</translation>
    </message>
    <message>
        <source>Never with bare fingers</source>
        <translation>Jamais à doigts nus</translation>
    </message>
    <message>
        <source>Tip it from its packet, or use forceps</source>
        <translation>Faites-la glisser du sachet, ou prenez une pince</translation>
    </message>
    <message>
        <source>I did not touch the lure</source>
        <translation>Je n’ai pas touché la phéromone</translation>
    </message>
    <message>
        <source>Lot on its packet</source>
        <translation>Lot sur son sachet</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation>Date limite</translation>
    </message>
    <message>
        <source>The killing strip was there</source>
        <translation>La plaquette insecticide était là</translation>
    </message>
    <message>
        <source>Moths were alive in the bucket</source>
        <translation>Papillons vivants dans le seau</translation>
    </message>
    <message>
        <source>Moths alive: the strip is spent. Change it.</source>
        <translation>Papillons vivants&#xa0;: la plaquette est épuisée. Remplacez-la.</translation>
    </message>
    <message>
        <source>Without its strip the trap lets moths out. Put a new one in.</source>
        <translation>Sans sa plaquette, le piège laisse sortir des papillons. Mettez-en une nouvelle.</translation>
    </message>
    <message>
        <source>I put in a new strip</source>
        <translation>J’ai mis une nouvelle plaquette</translation>
    </message>
    <message>
        <source>Before you touch a strip</source>
        <translation>Avant de toucher une plaquette</translation>
    </message>
</context>
<context>
    <name>LurePage</name>
    <message>
        <source>The trap cut open; the lure hangs in its basket under the lid</source>
        <translation>Le piège en coupe&#xa0;; la phéromone pend dans son panier sous le couvercle</translation>
    </message>
    <message>
        <source>The lure, in its basket under the lid</source>
        <translation>La phéromone, dans son panier sous le couvercle</translation>
    </message>
    <message>
        <source>Lot on the packet</source>
        <translation>Lot sur le sachet</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Peut rester vide.</translation>
    </message>
    <message>
        <source>Use by, on the packet</source>
        <translation>Date limite, sur le sachet</translation>
    </message>
    <message>
        <source>The lure is not in after all</source>
        <translation>La phéromone n’est finalement pas en place</translation>
    </message>
    <message>
        <source>Go on without the lure</source>
        <translation>Continuer sans la phéromone</translation>
    </message>
    <message>
        <source>The trap; its lure hangs inside</source>
        <translation>Le piège&#xa0;; sa phéromone pend à l’intérieur</translation>
    </message>
    <message>
        <source>The lure, inside the trap</source>
        <translation>La phéromone, dans le piège</translation>
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
    <name>Map</name>
    <message>
        <source>%1 is larger than 16 MB and is not read. Save a simpler outline.</source>
        <translation>%1 dépasse 16&#xa0;Mo et n’est pas lu. Enregistrez un contour plus simple.</translation>
    </message>
    <message>
        <source>%1 is no GeoJSON of areas or lines that can be shown. Save it as GeoJSON in degrees, with at most 400,000 positions.</source>
        <translation>%1 n’est pas un GeoJSON de zones ou de lignes qui puisse être affiché. Enregistrez-le en GeoJSON en degrés, avec au plus 400&#xa0;000 positions.</translation>
    </message>
    <message>
        <source>was down already</source>
        <translation>déjà retiré</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>relevé</translation>
    </message>
    <message>
        <source>nobody counted it</source>
        <translation>non relevé</translation>
    </message>
    <message>
        <source>Map of %1, week %2: %3.</source>
        <translation>Carte&#xa0;: %1, semaine du %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The highest catch so far: %1.</source>
        <translation>La plus forte capture jusqu’ici&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 traps counted for this week</source>
        <translation>%1 pièges sur %2 relevés pour cette semaine</translation>
    </message>
    <message>
        <source>%1 without a place</source>
        <translation>%1 sans emplacement</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation>aucun relevé encore</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>%1 jusqu’ici</translation>
    </message>
    <message>
        <source>Catch so far</source>
        <translation>Capture jusqu’ici</translation>
    </message>
    <message>
        <source>Last counted</source>
        <translation>Dernier relevé</translation>
    </message>
    <message>
        <source>District</source>
        <translation>District</translation>
    </message>
    <message>
        <source>Traps alone: %1 with a place and a full count are fewer than the 20 that it takes to say anything of what lies between.</source>
        <translation>Pièges seuls&#xa0;: %1 avec un emplacement et un relevé complet, c’est moins que les 20 nécessaires pour dire quoi que ce soit de ce qui se trouve entre eux.</translation>
    </message>
    <message>
        <source>Traps alone: all caught the same.</source>
        <translation>Pièges seuls&#xa0;: tous ont capturé autant.</translation>
    </message>
    <message>
        <source>Traps alone: neighbours tell what a trap catches only %1 % better than the mean of all. 5 % is the least.</source>
        <translation>Pièges seuls&#xa0;: les voisins n’indiquent la capture d’un piège que %1&#xa0;% mieux que ne le fait la moyenne de tous. Il faut au moins 5&#xa0;%.</translation>
    </message>
    <message>
        <source>Neighbours tell what a trap catches %1 % better than the mean of all. Larvae vary between neighbouring fields all the same.</source>
        <translation>Les voisins indiquent la capture d’un piège %1&#xa0;% mieux que ne le fait la moyenne de tous. Les larves varient quand même entre champs voisins.</translation>
    </message>
    <message>
        <source>N</source>
        <extracomment>the letter on a map&apos;s arrow</extracomment>
        <translation>N</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>at least: part was lost</source>
        <translation>au moins&#xa0;: une partie a été perdue</translation>
    </message>
    <message>
        <source>nobody counted it this week</source>
        <translation>non relevé cette semaine</translation>
    </message>
    <message>
        <source>The larger, the more %1 so far. Dots come where there is room.</source>
        <extracomment>moths, or what else is counted</extracomment>
        <translation>Plus le cercle est grand, plus il y a de %1 jusqu’ici. Les points apparaissent là où il y a de la place.</translation>
    </message>
    <message>
        <source>Chance that a trap has passed %1 so far</source>
        <translation>Probabilité qu’un piège ait dépassé %1 jusqu’ici</translation>
    </message>
    <message>
        <source>Chance that a season passes %1</source>
        <translation>Probabilité qu’une saison dépasse %1</translation>
    </message>
    <message>
        <source>low</source>
        <translation>faible</translation>
    </message>
    <message>
        <source>1 in 8</source>
        <translation>1 sur 8</translation>
    </message>
    <message>
        <source>1 in 3</source>
        <translation>1 sur 3</translation>
    </message>
    <message>
        <source>2 in 3</source>
        <translation>2 sur 3</translation>
    </message>
    <message>
        <source>little known</source>
        <translation>peu connu</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Areas: %1, lines: %2</source>
        <translation>Zones : %1, lignes : %2</translation>
    </message>
</context>
<context>
    <name>MapOverlays</name>
    <message>
        <source>Leave it out</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>Add boundaries from a file</source>
        <translation>Ajouter des limites d’un fichier</translation>
    </message>
    <message>
        <source>A file of boundaries or lines</source>
        <translation>Un fichier de limites ou de lignes</translation>
    </message>
    <message>
        <source>GeoJSON, such as districts or roads. It stays on this device.</source>
        <translation>GeoJSON, par exemple des districts ou des routes. Il reste sur cet appareil.</translation>
    </message>
    <message>
        <source>GeoJSON (*.geojson *.json)</source>
        <translation>GeoJSON (*.geojson *.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Show it on the map</source>
        <translation>Afficher sur la carte</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
</context>
<context>
    <name>MapPanel</name>
    <message>
        <source>Week</source>
        <translation>Semaine</translation>
    </message>
    <message>
        <source>Pest and trap</source>
        <translation>Ravageur et piège</translation>
    </message>
    <message>
        <source>Between the traps, the chance of more than</source>
        <translation>Entre les pièges, probabilité de plus de</translation>
    </message>
    <message>
        <source>Key of the map</source>
        <translation>Légende de la carte</translation>
    </message>
    <message>
        <source>Keys: arrows move the map, + and − go nearer and farther, 0 shows all, N and P go from trap to trap, Enter opens one, [ and ] change the week.</source>
        <translation>Touches&#xa0;: les flèches déplacent la carte, + et − rapprochent et éloignent, 0 montre tout, N et P vont d’un piège à l’autre, Entrée en ouvre un, [ et ] changent de semaine.</translation>
    </message>
</context>
<context>
    <name>MapSave</name>
    <message>
        <source>Written: %1</source>
        <translation>Écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Save the map as a picture</source>
        <translation>Enregistrer la carte en image</translation>
    </message>
    <message>
        <source>It shows where every trap stands: for the desk, not for the public.</source>
        <translation>Elle montre où est chaque piège&#xa0;: pour le bureau, pas pour le public.</translation>
    </message>
    <message>
        <source>Folder for the picture</source>
        <translation>Dossier pour l’image</translation>
    </message>
    <message>
        <source>Save it as SVG</source>
        <translation>Enregistrer en SVG</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
</context>
<context>
    <name>MapTrapCard</name>
    <message>
        <source>Touch a trap to see what it caught.</source>
        <translation>Touchez un piège pour voir ce qu’il a capturé.</translation>
    </message>
    <message>
        <source>Open its season</source>
        <translation>Ouvrir sa saison</translation>
    </message>
</context>
<context>
    <name>MapView</name>
    <message>
        <source>Nearer</source>
        <translation>Rapprocher</translation>
    </message>
    <message>
        <source>Farther</source>
        <translation>Éloigner</translation>
    </message>
    <message>
        <source>Whole region</source>
        <translation>Toute la région</translation>
    </message>
</context>
<context>
    <name>MarkText</name>
    <message>
        <source>People differ on it: the highest is drawn until it is settled.</source>
        <translation>Les données divergent&#xa0;: la valeur la plus élevée est affichée jusqu’à ce que ce soit tranché.</translation>
    </message>
    <message>
        <source>A change is proposed to it, and waits for a coordinator.</source>
        <translation>Une modification est proposée&#xa0;; elle attend la coordination.</translation>
    </message>
    <message>
        <source>A change of it was kept aside.</source>
        <translation>Une modification a été mise de côté.</translation>
    </message>
</context>
<context>
    <name>MemberPage</name>
    <message>
        <source>%1, until %2</source>
        <comment>role, last day</comment>
        <translation>%1, jusqu’au %2</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Appareils</translation>
    </message>
    <message>
        <source>No device of this member has come in yet.</source>
        <translation>Aucun appareil de ce membre n’est encore arrivé.</translation>
    </message>
    <message>
        <source>Invite another device of %1</source>
        <translation>Inviter un autre appareil de %1</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Champs</translation>
    </message>
    <message>
        <source>Works at these fields too</source>
        <translation>Travaille aussi dans ces champs</translation>
    </message>
    <message>
        <source>Takes part as</source>
        <translation>Participe comme</translation>
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
        <source>Leaves the programme after</source>
        <translation>Quitte le programme après le</translation>
    </message>
    <message>
        <source>What is entered for later days is kept aside. Everything before it stays.</source>
        <translation>Ce qui est saisi pour des jours ultérieurs est mis de côté. Tout ce qui précède reste.</translation>
    </message>
    <message>
        <source>This is the last day</source>
        <translation>C’est le dernier jour</translation>
    </message>
</context>
<context>
    <name>Members</name>
    <message>
        <source>Members and devices</source>
        <translation>Membres et appareils</translation>
    </message>
    <message>
        <source>Only this device can name coordinators</source>
        <translation>Seul cet appareil peut nommer des coordonnateurs</translation>
    </message>
    <message>
        <source>If it is lost, nobody can any more. Invite a second coordinator, or another device of yours, and make it a main device too.</source>
        <translation>S’il est perdu, plus personne ne le peut. Invitez un deuxième coordonnateur, ou un autre de vos appareils, et faites-en aussi un appareil principal.</translation>
    </message>
    <message>
        <source>Invited, not here yet</source>
        <translation>Invités, pas encore arrivés</translation>
    </message>
    <message>
        <source>Take the invitation back</source>
        <translation>Retirer l’invitation</translation>
    </message>
    <message>
        <source>Invite somebody</source>
        <translation>Inviter quelqu’un</translation>
    </message>
</context>
<context>
    <name>MothGuidePage</name>
    <message>
        <source>Look at the freshest ones. Not sure? Count it as not sure and keep it.</source>
        <translation>Regardez les plus frais. Un doute&#xa0;? Comptez-le comme incertain et gardez-le.</translation>
    </message>
    <message>
        <source>%1: the pest</source>
        <translation>%1&#xa0;: le ravageur</translation>
    </message>
    <message>
        <source>%1: not it</source>
        <translation>%1&#xa0;: pas le ravageur</translation>
    </message>
    <message>
        <source>Drawing of a %1 moth with open wings</source>
        <translation>Dessin d’un papillon aux ailes ouvertes&#xa0;: %1</translation>
    </message>
    <message>
        <source>Back to the count</source>
        <translation>Retour au relevé</translation>
    </message>
    <message>
        <source>Which %1 is it?</source>
        <translation>Quelle espèce de %1&#xa0;?</translation>
    </message>
</context>
<context>
    <name>News</name>
    <message>
        <source>Bulletin</source>
        <translation>Bulletin</translation>
    </message>
    <message>
        <source>No bulletin has come yet this season. It comes with an exchange, once a coordinator has published a week.</source>
        <translation>Aucun bulletin n’est encore arrivé cette saison. Il vient avec un échange, une fois que la coordination a publié une semaine.</translation>
    </message>
    <message>
        <source>A trap catch never decides a spray. Fields beside each other differ: look for larvae in your own, read the label, and follow local rules and your licensed adviser.</source>
        <translation>Une capture ne décide jamais d’un traitement. Des champs voisins diffèrent&#xa0;: cherchez les larves dans le vôtre, lisez l’étiquette et suivez la réglementation locale et votre conseiller agréé.</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Autres</translation>
    </message>
    <message>
        <source>Weeks before</source>
        <translation>Semaines précédentes</translation>
    </message>
    <message>
        <source>%1 of %2 in, median %3 this week, %4 so far</source>
        <extracomment>traps counted, traps that stand out, moths</extracomment>
        <translation>%1 sur %2 relevés, médiane %3 cette semaine, %4 jusqu’ici</translation>
    </message>
    <message>
        <source>Band of the median so far: %1.</source>
        <translation>Classe de la médiane jusqu’ici&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Highest band: %1.</source>
        <translation>Classe la plus haute&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Flight: %1.</source>
        <translation>Vol&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Week %1 of %2</source>
        <translation>Semaine %1 de %2</translation>
    </message>
    <message>
        <source>No figures: held back, so that no farm can be told from them.</source>
        <translation>Pas de chiffres&#xa0;: retenus, pour qu’aucune ferme ne puisse être reconnue.</translation>
    </message>
</context>
<context>
    <name>NextCard</name>
    <message>
        <source>Bring a white tray, clean gloves, a pencil, and small bags for those you are not sure of.</source>
        <translation>Apportez un plateau blanc, des gants propres, un crayon et de petits sachets pour ceux dont vous doutez.</translation>
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
        <translation>Choisissez un piège</translation>
    </message>
    <message>
        <source>Its season, its visits and its life open here.</source>
        <translation>Sa saison, ses visites et sa vie s’ouvrent ici.</translation>
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
    <name>OwnNews</name>
    <message>
        <source>Bulletin: %1</source>
        <translation>Bulletin&#xa0;: %1</translation>
    </message>
    <message>
        <source>The region: %1</source>
        <translation>La région&#xa0;: %1</translation>
    </message>
    <message>
        <source>Your district, %1: %2</source>
        <translation>Votre district, %1&#xa0;: %2</translation>
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
    <name>PageWords</name>
    <message>
        <source>today, %1</source>
        <translation>aujourd’hui, %1</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source>at the widest</source>
        <translation>au plus large</translation>
    </message>
    <message>
        <source>Calendar of pest and crop</source>
        <translation>Calendrier du ravageur et de la culture</translation>
    </message>
    <message>
        <source>Calendar of pest and crop. %1. The list below says why.</source>
        <translation>Calendrier du ravageur et de la culture. %1. La liste ci-dessous dit pourquoi.</translation>
    </message>
    <message>
        <source>last count</source>
        <translation>dernier relevé</translation>
    </message>
    <message>
        <source>Part of the flight that is over</source>
        <translation>Part du vol déjà passée</translation>
    </message>
    <message>
        <source>No counts yet</source>
        <translation>Aucun relevé encore</translation>
    </message>
    <message>
        <source>Caught at each count</source>
        <translation>Capture à chaque relevé</translation>
    </message>
    <message>
        <source>The flight by days</source>
        <translation>Le vol selon les jours</translation>
    </message>
    <message>
        <source>Caught at each count, by %1</source>
        <translation>Capture à chaque relevé, selon les %1</translation>
    </message>
    <message>
        <source>The flight by warmth</source>
        <translation>Le vol selon la chaleur</translation>
    </message>
    <message>
        <source>%1: half of all chances as the inner band, nine in ten as the outer one. Peak: %2. Half of it over: %3. Bars: %4.</source>
        <translation>%1&#xa0;: la moitié des chances dans la bande intérieure, neuf sur dix dans la bande extérieure. Pic&#xa0;: %2. Moitié passée&#xa0;: %3. Barres&#xa0;: %4.</translation>
    </message>
    <message>
        <source>at the widest %1</source>
        <translation>au plus large %1</translation>
    </message>
    <message>
        <source>degree-days (°F)</source>
        <translation>degrés-jours (°F)</translation>
    </message>
    <message>
        <source>degree-days (°C)</source>
        <translation>degrés-jours (°C)</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <comment>two sums and their unit</comment>
        <translation>%1 à %2 %3</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <extracomment>a range of warmth, and the days on which it is reached</extracomment>
        <translation>%1, environ %2</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>At least %1 from %2 to %3, measured at %4.</source>
        <translation>Au moins %1 du %2 au %3, mesurés à %4.</translation>
    </message>
    <message>
        <source>%1 from %2 to %3, measured at %4.</source>
        <translation>%1 du %2 au %3, mesurés à %4.</translation>
    </message>
    <message>
        <source>Nearest station with temperatures: %1.</source>
        <translation>Station la plus proche avec des températures&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Method: %1, above %2</source>
        <translation>Méthode&#xa0;: %1, au-dessus de %2</translation>
    </message>
    <message>
        <source>, up to %1 (%2)</source>
        <translation>, jusqu’à %1 (%2)</translation>
    </message>
    <message>
        <source>Base temperature: %1</source>
        <translation>Température de base&#xa0;: %1</translation>
    </message>
    <message>
        <source>Its day ends at %1.</source>
        <translation>Sa journée finit à %1.</translation>
    </message>
    <message>
        <source>What is still to come is expected from one past year of the station.</source>
        <translation>La suite est attendue d’après une année passée de la station.</translation>
    </message>
    <message numerus="yes">
        <source>What is still to come is expected from %n past years of the station.</source>
        <translation>
            <numerusform>La suite est attendue d’après %n année passée de la station.</numerusform>
            <numerusform>La suite est attendue d’après %n années passées de la station.</numerusform>
        </translation>
    </message>
    <message>
        <source>Flight of this trap: %1</source>
        <translation>Vol de ce piège&#xa0;: %1</translation>
    </message>
    <message>
        <source>Flight of the district: %1</source>
        <translation>Vol du district&#xa0;: %1</translation>
    </message>
    <message>
        <source>By the last count %1 of the flight was over.</source>
        <translation>Au dernier relevé, %1 du vol était passé.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>what happens, and when</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Well begun</source>
        <translation>Bien commencé</translation>
    </message>
    <message>
        <source>Peak</source>
        <translation>Pic</translation>
    </message>
    <message>
        <source>Half of it over</source>
        <translation>Moitié passée</translation>
    </message>
    <message>
        <source>Nearly over</source>
        <translation>Presque terminé</translation>
    </message>
    <message>
        <source>Well begun: one in twenty has flown. Nearly over: nineteen in twenty.</source>
        <translation>Bien commencé&#xa0;: un sur vingt a volé. Presque terminé&#xa0;: dix-neuf sur vingt.</translation>
    </message>
    <message>
        <source>Each range holds nine times in ten where flights are as in the model.</source>
        <translation>Chaque intervalle est juste neuf fois sur dix si les vols sont comme dans le modèle.</translation>
    </message>
    <message>
        <source>From %1 in %2 counts of %3 traps that are on this device.</source>
        <translation>D’après %1 dans %2 relevés de %3 pièges présents sur cet appareil.</translation>
    </message>
    <message>
        <source>From %1 in one count.</source>
        <translation>D’après %1 dans un relevé.</translation>
    </message>
    <message numerus="yes">
        <source>From %1 in %n counts.</source>
        <translation>
            <numerusform>D’après %1 dans %n relevé.</numerusform>
            <numerusform>D’après %1 dans %n relevés.</numerusform>
        </translation>
    </message>
    <message>
        <source>Fewer than %1 caught, or one count alone, say nothing: what you see is what was expected beforehand.</source>
        <translation>Une capture de moins de %1, ou un seul relevé, ne dit rien&#xa0;: ce que vous voyez est ce qui était attendu d’avance.</translation>
    </message>
    <message>
        <source>Four shapes of a flight are weighed against the counts. Missed weeks and catches that are only a minimum are left out, not taken for zero.</source>
        <translation>Quatre formes de vol sont comparées aux relevés. Les semaines manquées et les captures qui ne sont qu’un minimum sont écartées, et non prises pour zéro.</translation>
    </message>
    <message>
        <source>Expected beforehand: %1</source>
        <translation>Attendu d’avance&#xa0;: %1</translation>
    </message>
    <message>
        <source>How much flights differ: %1</source>
        <translation>Écarts entre les vols&#xa0;: %1</translation>
    </message>
    <message>
        <source>No past years of this programme are in it yet.</source>
        <translation>Aucune année passée de ce programme n’y entre encore.</translation>
    </message>
    <message>
        <source>In it is one past year of this programme.</source>
        <translation>Une année passée de ce programme y entre.</translation>
    </message>
    <message numerus="yes">
        <source>In it are %n past years of this programme.</source>
        <translation>
            <numerusform>%n année passée de ce programme y entre.</numerusform>
            <numerusform>%n années passées de ce programme y entrent.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PairCard</name>
    <message>
        <source>A pair of traps: two counts, never added together.</source>
        <translation>Une paire de pièges&#xa0;: deux relevés, jamais additionnés.</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>Where the frames were</source>
        <translation>Où étaient les cadres</translation>
    </message>
    <message>
        <source>N</source>
        <extracomment>the letter beside the arrow that points to the north</extracomment>
        <translation>N</translation>
    </message>
    <message>
        <source>Bold: larvae. Light: number of the frame. Ring: none found.</source>
        <translation>Gras&#xa0;: larves. Maigre&#xa0;: numéro du cadre. Anneau&#xa0;: aucune trouvée.</translation>
    </message>
    <message>
        <source>No frame knows its place, so there is no sketch.</source>
        <translation>Aucun cadre ne connaît son emplacement&#xa0;: il n’y a donc pas de croquis.</translation>
    </message>
    <message>
        <source>Some frames lie too close together for their numbers: see the table.</source>
        <translation>Certains cadres sont trop proches pour porter leur numéro&#xa0;: voir le tableau.</translation>
    </message>
    <message>
        <source>Larvae so far, by stop</source>
        <translation>Larves jusqu’ici, par arrêt</translation>
    </message>
    <message>
        <source>above your threshold</source>
        <translation>au-dessus de votre seuil</translation>
    </message>
    <message>
        <source>keep looking</source>
        <translation>continuer à chercher</translation>
    </message>
    <message>
        <source>below</source>
        <translation>en dessous</translation>
    </message>
    <message>
        <source>stops</source>
        <extracomment>what the lower axis counts</extracomment>
        <translation>arrêts</translation>
    </message>
</context>
<context>
    <name>PeopleText</name>
    <message>
        <source>this device</source>
        <translation>cet appareil</translation>
    </message>
    <message>
        <source>a device not known here</source>
        <translation>un appareil inconnu ici</translation>
    </message>
    <message>
        <source>a device of %1</source>
        <extracomment>a person and the name of the device: Ida&apos;s phone</extracomment>
        <translation>un appareil de %1</translation>
    </message>
    <message>
        <source>%1’s %2</source>
        <translation>%2 de %1</translation>
    </message>
</context>
<context>
    <name>PestCalendar</name>
    <message>
        <source>Reading …</source>
        <translation>Lecture …</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Afficher</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendrier</translation>
    </message>
    <message>
        <source>Flight</source>
        <translation>Vol</translation>
    </message>
    <message>
        <source>Before you decide</source>
        <translation>Avant de décider</translation>
    </message>
    <message>
        <source>When and why</source>
        <translation>Quand et pourquoi</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Chaleur</translation>
    </message>
    <message>
        <source>What cannot be said</source>
        <translation>Ce qu’on ne peut pas dire</translation>
    </message>
    <message>
        <source>%1 to %2 days</source>
        <translation>%1 à %2 jours</translation>
    </message>
    <message>
        <source>Written down at set-up.</source>
        <translation>Noté à l’installation.</translation>
    </message>
    <message>
        <source>Seen in this field.</source>
        <translation>Vu dans ce champ.</translation>
    </message>
    <message>
        <source>Written down with a decision on this field.</source>
        <translation>Noté avec une décision sur ce champ.</translation>
    </message>
    <message>
        <source>The first of this field was caught in these nights.</source>
        <translation>La première capture de ce champ date de ces nuits.</translation>
    </message>
    <message>
        <source>From the counts of this field and what was expected before them.</source>
        <translation>D’après les relevés de ce champ et ce qui était attendu d’avance.</translation>
    </message>
    <message>
        <source>What is expected of a flight. Too little is counted yet to say more.</source>
        <translation>Ce qu’on attend d’un vol. Trop peu de relevés encore pour en dire plus.</translation>
    </message>
    <message>
        <source>The day on which warmth reaches the sum that the protocol names.</source>
        <translation>Le jour où la chaleur atteint la somme que donne le protocole.</translation>
    </message>
    <message>
        <source>The days that the protocol names for every year.</source>
        <translation>Les jours que le protocole donne pour chaque année.</translation>
    </message>
    <message>
        <source>%1 after the traps go up.</source>
        <translation>%1 après l’installation des pièges.</translation>
    </message>
    <message>
        <source>%1 after the peak of the flight.</source>
        <translation>%1 après le pic du vol.</translation>
    </message>
    <message>
        <source>%1 after seeding.</source>
        <translation>%1 après le semis.</translation>
    </message>
    <message>
        <source>%1 after seeding, moved by the stage that was seen last.</source>
        <translation>%1 après le semis, ajusté d’après le dernier stade observé.</translation>
    </message>
    <message>
        <source>%1 of the label before the earliest cutting.</source>
        <translation>%1 avant la coupe la plus hâtive, selon l’étiquette.</translation>
    </message>
    <message>
        <source>Traps up</source>
        <translation>Pièges installés</translation>
    </message>
    <message>
        <source>First catch</source>
        <translation>Première capture</translation>
    </message>
    <message>
        <source>Peak of the flight</source>
        <translation>Pic du vol</translation>
    </message>
    <message>
        <source>Eggs hatch</source>
        <translation>Éclosion des œufs</translation>
    </message>
    <message>
        <source>Scouting for larvae</source>
        <translation>Dépistage des larves</translation>
    </message>
    <message>
        <source>Larvae of damaging size</source>
        <translation>Larves de taille nuisible</translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation>Coupe</translation>
    </message>
    <message>
        <source>Last day for control by the label</source>
        <translation>Dernier jour de traitement selon l’étiquette</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>the crop, and the stage it is in</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two days</extracomment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>attendu</translation>
    </message>
    <message>
        <source>That most eggs are laid about the peak: common practice, no source.</source>
        <translation>La plupart des œufs sont pondus vers le pic&#xa0;: pratique courante, sans source.</translation>
    </message>
    <message>
        <source>That the window lasts two weeks: common practice, no source.</source>
        <translation>La fenêtre dure deux semaines&#xa0;: pratique courante, sans source.</translation>
    </message>
    <message>
        <source>Warmth is not used: nobody has published a base temperature and a start for this pest. A coordinator who has them writes them into a copy of the protocol.</source>
        <translation>La chaleur n’est pas utilisée&#xa0;: personne n’a publié de température de base ni de début pour ce ravageur. Un coordonnateur qui les a les écrit dans une copie du protocole.</translation>
    </message>
    <message>
        <source>No warmth: no trap of this field has a position, so no station is nearest. Read the position at the trap.</source>
        <translation>Pas de chaleur&#xa0;: aucun piège de ce champ n’a de position, donc aucune station n’est la plus proche. Mesurez la position au piège.</translation>
    </message>
    <message>
        <source>No warmth: the programme has no weather station with a position. A coordinator brings in daily lows and highs under “Bring in temperatures” on the season’s page, or with “duskrow-tool temperatures”.</source>
        <translation>Pas de chaleur&#xa0;: le programme n’a aucune station météo avec une position. Un coordonnateur importe les minimums et maximums quotidiens sous «&#xa0;Importer des températures&#xa0;» à la page de la saison, ou avec «&#xa0;duskrow-tool temperatures&#xa0;».</translation>
    </message>
    <message>
        <source>No warmth: the nearest station has no temperatures. A coordinator brings in daily lows and highs under “Bring in temperatures” on the season’s page, or with “duskrow-tool temperatures”.</source>
        <translation>Pas de chaleur&#xa0;: la station la plus proche n’a pas de températures. Un coordonnateur importe les minimums et maximums quotidiens sous «&#xa0;Importer des températures&#xa0;» à la page de la saison, ou avec «&#xa0;duskrow-tool temperatures&#xa0;».</translation>
    </message>
    <message>
        <source>No temperatures of this year: all warmth is that of past years. Bring in this year’s.</source>
        <translation>Pas de températures de cette année&#xa0;: toute la chaleur est celle des années passées. Importez celles de cette année.</translation>
    </message>
    <message>
        <source>Days are missing at the station that nothing stands in for: its sum is at least what is said. Bring in the missing days.</source>
        <translation>Il manque à la station des jours que rien ne remplace&#xa0;: sa somme est au moins celle qui est dite. Importez les jours manquants.</translation>
    </message>
    <message>
        <source>The station has no past years: nothing can be said of the warmth still to come. Bring in past years.</source>
        <translation>La station n’a pas d’années passées&#xa0;: on ne peut rien dire de la chaleur à venir. Importez des années passées.</translation>
    </message>
    <message>
        <source>No day comes from warmth: nobody has published at what sum things happen to this pest. A coordinator who has sums writes them into a copy of the protocol.</source>
        <translation>Aucun jour ne vient de la chaleur&#xa0;: personne n’a publié à quelles sommes se produisent les étapes de ce ravageur. Un coordonnateur qui a des sommes les écrit dans une copie du protocole.</translation>
    </message>
    <message>
        <source>No curve of the flight: nobody has published when this pest flies and for how long. A coordinator writes what is expected into a copy of the protocol.</source>
        <translation>Pas de courbe du vol&#xa0;: personne n’a publié quand ce ravageur vole ni pendant combien de temps. Un coordonnateur écrit ce qui est attendu dans une copie du protocole.</translation>
    </message>
    <message>
        <source>Nobody has published how long this pest takes to larvae of damaging size: look into the field.</source>
        <translation>Personne n’a publié le temps qu’il faut à ce ravageur pour donner des larves de taille nuisible&#xa0;: examinez le champ.</translation>
    </message>
    <message>
        <source>No crop stages: the protocol names no days from seeding for this crop. Note the stage on each walk.</source>
        <translation>Pas de stades de la culture&#xa0;: le protocole ne donne pas de jours depuis le semis pour cette culture. Notez le stade à chaque tournée de dépistage.</translation>
    </message>
    <message>
        <source>No days of the crop: nobody has written down when this field was seeded. Put it right in the field’s record.</source>
        <translation>Pas de jours de la culture&#xa0;: personne n’a noté quand ce champ a été semé. Complétez la fiche du champ.</translation>
    </message>
    <message>
        <source>No day for cutting: neither written down nor expected. Write it down with a decision on this field.</source>
        <translation>Pas de jour de coupe&#xa0;: ni noté, ni attendu. Notez-le avec une décision sur ce champ.</translation>
    </message>
    <message>
        <source>No last day for control: the days that the label asks for before cutting are not written down. Write them down with a decision on this field.</source>
        <translation>Pas de dernier jour de traitement&#xa0;: le délai avant la coupe qu’exige l’étiquette n’est pas noté. Notez-le avec une décision sur ce champ.</translation>
    </message>
    <message>
        <source>too little counted to say</source>
        <translation>trop peu de captures pour le dire</translation>
    </message>
    <message>
        <source>nobody can say yet</source>
        <translation>personne ne peut encore le dire</translation>
    </message>
    <message>
        <source>early</source>
        <translation>au début</translation>
    </message>
    <message>
        <source>around its peak</source>
        <translation>autour du pic</translation>
    </message>
    <message>
        <source>past its peak</source>
        <translation>pic passé</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 à %2&#xa0;%</translation>
    </message>
</context>
<context>
    <name>PlacePage</name>
    <message>
        <source>The trap stands here</source>
        <translation>Le piège est ici</translation>
    </message>
    <message>
        <source>metres: the place is known this well</source>
        <translation>mètres&#xa0;: précision de l’emplacement</translation>
    </message>
    <message>
        <source>Waiting for the first fix, under the open sky</source>
        <translation>En attente d’une première position, à ciel ouvert</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>stable</translation>
    </message>
    <message>
        <source>still settling</source>
        <translation>pas encore stable</translation>
    </message>
    <message>
        <source>Waiting longer would hardly help.</source>
        <translation>Attendre davantage n’aiderait guère.</translation>
    </message>
    <message>
        <source>Stand where the trap will stand and wait, or use the place as it is.</source>
        <translation>Placez-vous là où sera le piège et attendez, ou utilisez l’emplacement tel quel.</translation>
    </message>
    <message>
        <source>This device finds no position by itself. Type the coordinates, or name a position log in the settings.</source>
        <translation>Cet appareil ne trouve pas seul sa position. Saisissez les coordonnées, ou indiquez un journal de positions dans les réglages.</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitude</translation>
    </message>
    <message>
        <source>For example 52.15790</source>
        <translation>Par exemple 52.15790</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Longitude</translation>
    </message>
    <message>
        <source>West has a minus: -106.67020</source>
        <translation>L’ouest prend un moins&#xa0;: -106.67020</translation>
    </message>
    <message>
        <source>Measure instead</source>
        <translation>Mesurer plutôt</translation>
    </message>
    <message>
        <source>Type the coordinates instead</source>
        <translation>Saisir plutôt les coordonnées</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation>Mesurer de nouveau</translation>
    </message>
</context>
<context>
    <name>PrintCommand</name>
    <message>
        <source>A draft: not published.</source>
        <translation>Un brouillon&#xa0;: non publié.</translation>
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
    <message>
        <source>The traps of this season are for</source>
        <translation>Les pièges de cette saison visent</translation>
    </message>
</context>
<context>
    <name>ProgressPanel</name>
    <message>
        <source>%1: %2 %</source>
        <translation>%1&#xa0;: %2&#xa0;%</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêt</translation>
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
    <name>Publish</name>
    <message>
        <source>Bulletin</source>
        <translation>Bulletin</translation>
    </message>
    <message>
        <source>Week before</source>
        <translation>Semaine précédente</translation>
    </message>
    <message>
        <source>Week after</source>
        <translation>Semaine suivante</translation>
    </message>
    <message>
        <source>Look at a new issue</source>
        <translation>Voir une nouvelle édition</translation>
    </message>
    <message>
        <source>Language of the readers</source>
        <translation>Langue des lecteurs</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>Your own words. Empty it for the drafted text.</source>
        <translation>Vos propres mots. Videz le champ pour revenir au texte proposé.</translation>
    </message>
    <message>
        <source>Drafted from the counts; change it as you like. An empty line parts paragraphs.</source>
        <translation>Rédigé d’après les relevés&#xa0;; modifiez-le à votre gré. Une ligne vide sépare les paragraphes.</translation>
    </message>
    <message>
        <source>Boundaries of districts (GeoJSON), for the map</source>
        <translation>Limites des districts (GeoJSON), pour la carte</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Dossier pour les fichiers</translation>
    </message>
    <message>
        <source>A web page, tables, a map, an archive and a feed: to be put where people read.</source>
        <translation>Une page web, des tableaux, une carte, une archive et un flux&#xa0;: à placer là où les gens lisent.</translation>
    </message>
    <message>
        <source>Write the files again</source>
        <translation>Écrire de nouveau les fichiers</translation>
    </message>
    <message>
        <source>Open the web page</source>
        <translation>Ouvrir la page web</translation>
    </message>
    <message>
        <source>Publish this week?</source>
        <translation>Publier cette semaine&#xa0;?</translation>
    </message>
    <message>
        <source>Every phone of the programme gets it at its next exchange, and the files are written. The week no longer moves with late counts.</source>
        <translation>Chaque téléphone du programme la reçoit à son prochain échange, et les fichiers sont écrits. La semaine ne bouge plus avec les relevés tardifs.</translation>
    </message>
    <message>
        <source>Publish</source>
        <translation>Publier</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>Publish the new issue</source>
        <translation>Publier la nouvelle édition</translation>
    </message>
    <message>
        <source>Publish this week</source>
        <translation>Publier cette semaine</translation>
    </message>
    <message>
        <source>Each with the name of its district. Without a file, the areas on your map that bear a district&apos;s name are taken.</source>
        <translation>Chacune avec le nom de son district. Sans fichier, les zones de votre carte qui portent le nom d’un district sont prises.</translation>
    </message>
</context>
<context>
    <name>Question</name>
    <message>
        <source>%1 Is it right?</source>
        <extracomment>a sentence that says why a record is looked at</extracomment>
        <translation>%1 Est-ce juste&#xa0;?</translation>
    </message>
    <message>
        <source>Is this count right: %1?</source>
        <translation>Ce relevé est-il juste&#xa0;: %1&#xa0;?</translation>
    </message>
    <message>
        <source>%1.</source>
        <extracomment>&quot;It is right.&quot;</extracomment>
        <translation>%1.</translation>
    </message>
</context>
<context>
    <name>QuestionCard</name>
    <message>
        <source>It is right</source>
        <translation>C’est juste</translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Or in your words</source>
        <translation>Ou dans vos mots</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Répondre</translation>
    </message>
    <message>
        <source>One more question comes after this one.</source>
        <translation>Une autre question suit celle-ci.</translation>
    </message>
    <message>
        <source>%1 more questions come after this one.</source>
        <translation>%1 autres questions suivent celle-ci.</translation>
    </message>
</context>
<context>
    <name>QuestionSheet</name>
    <message>
        <source>Say what you would like to know.</source>
        <translation>Dites ce que vous aimeriez savoir.</translation>
    </message>
    <message>
        <source>Ask %1 about this count?</source>
        <translation>Poser une question à %1 sur ce relevé&#xa0;?</translation>
    </message>
    <message>
        <source>The question goes along with the next exchange and stands on Today there. The count stays as it is.</source>
        <translation>La question part avec le prochain échange et s’affiche là-bas dans «&#xa0;Aujourd’hui&#xa0;». Le relevé reste tel quel.</translation>
    </message>
    <message>
        <source>The question</source>
        <translation>La question</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Demander</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>a kind of record and its day</extracomment>
        <translation>%1 du %2</translation>
    </message>
    <message>
        <source>something from a newer version</source>
        <translation>une donnée d’une version plus récente</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>field and value</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>who, when</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>RefusedRows</name>
    <message>
        <source>Nothing is made of these rows</source>
        <translation>Rien n’est créé à partir de ces lignes</translation>
    </message>
</context>
<context>
    <name>RegionMap</name>
    <message>
        <source>Map</source>
        <translation>Carte</translation>
    </message>
</context>
<context>
    <name>ReportedHow</name>
    <message>
        <source>by phone</source>
        <translation>par téléphone</translation>
    </message>
    <message>
        <source>by text message</source>
        <translation>par texto</translation>
    </message>
    <message>
        <source>in person</source>
        <translation>en personne</translation>
    </message>
    <message>
        <source>on paper</source>
        <translation>sur papier</translation>
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
        <translation>Afficher</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Arrêts</translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Préparer</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
</context>
<context>
    <name>RoundBefore</name>
    <message>
        <source>Before you go</source>
        <translation>Avant de partir</translation>
    </message>
    <message>
        <source>Back by</source>
        <translation>Retour au plus tard à</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>−30 minutes</source>
        <translation>−30 minutes</translation>
    </message>
    <message>
        <source>30 minutes sooner</source>
        <translation>30 minutes plus tôt</translation>
    </message>
    <message>
        <source>+30 minutes</source>
        <translation>+30 minutes</translation>
    </message>
    <message>
        <source>30 minutes later</source>
        <translation>30 minutes plus tard</translation>
    </message>
    <message>
        <source>Telephone of whoever waits</source>
        <translation>Téléphone de la personne qui attend</translation>
    </message>
    <message>
        <source>May be left empty: the phone then asks for whom.</source>
        <translation>Peut rester vide&#xa0;: le téléphone demande alors à qui.</translation>
    </message>
    <message>
        <source>Nothing is sent from here, and nobody is followed: the phone&apos;s own messages open with these words, and you send them.</source>
        <translation>Rien n’est envoyé d’ici et personne n’est suivi&#xa0;: les messages du téléphone s’ouvrent avec ces mots, et c’est vous qui les envoyez.</translation>
    </message>
    <message>
        <source>No messages on this device take it. Read the words out to somebody instead.</source>
        <translation>Aucune messagerie de cet appareil ne le prend. Lisez plutôt le texte à quelqu’un.</translation>
    </message>
    <message>
        <source>Hand to the phone&apos;s messages</source>
        <translation>Passer aux messages du téléphone</translation>
    </message>
</context>
<context>
    <name>RoundOrder</name>
    <message>
        <source>Distances</source>
        <translation>Distances</translation>
    </message>
    <message>
        <source>Straight lines</source>
        <extracomment>how distances are reckoned: as the crow flies, or north-south and east-west</extracomment>
        <translation>En ligne droite</translation>
    </message>
    <message>
        <source>Survey grid</source>
        <translation>Grille d’arpentage</translation>
    </message>
    <message>
        <source>On the grid one goes north-south and east-west, as roads run where land was surveyed in squares. Either way it is a suggestion: no road, gate or slough is known here.</source>
        <translation>Sur la grille, on va du nord au sud et d’est en ouest, comme les routes là où le terrain a été arpenté en carrés. Dans les deux cas, c’est une suggestion&#xa0;: aucune route, barrière ni marécage n’est connu ici.</translation>
    </message>
    <message>
        <source>Infested fields last</source>
        <translation>Champs infestés en dernier</translation>
    </message>
    <message>
        <source>A field is infested when its latest walk was above the threshold, or when you mark it under “Change”.</source>
        <translation>Un champ est infesté si sa dernière tournée de dépistage dépassait le seuil, ou si vous le marquez sous «&#xa0;Modifier&#xa0;».</translation>
    </message>
    <message>
        <source>Suggest an order again</source>
        <translation>Suggérer un nouvel ordre</translation>
    </message>
    <message>
        <source>File of the stops</source>
        <translation>Fichier des arrêts</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>The file is called %1. Receivers and maps read it.</source>
        <translation>Le fichier s’appelle %1. Les récepteurs et les cartes le lisent.</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Écrire le fichier</translation>
    </message>
</context>
<context>
    <name>RoundStopCard</name>
    <message>
        <source>infested field</source>
        <translation>champ infesté</translation>
    </message>
    <message>
        <source>Infested field</source>
        <translation>Champ infesté</translation>
    </message>
    <message>
        <source>This field is infested</source>
        <translation>Ce champ est infesté</translation>
    </message>
    <message>
        <source>%1: this field is infested</source>
        <translation>%1&#xa0;: ce champ est infesté</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Plus tôt</translation>
    </message>
    <message>
        <source>%1: earlier</source>
        <translation>%1&#xa0;: plus tôt</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>%1: later</source>
        <translation>%1&#xa0;: plus tard</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>%1: show it on the phone&apos;s map</source>
        <translation>%1&#xa0;: montrer sur la carte du téléphone</translation>
    </message>
</context>
<context>
    <name>RoundStops</name>
    <message>
        <source>No map on this device takes a place. The file of the stops can be carried to one that does.</source>
        <translation>Aucune carte de cet appareil n’accepte d’emplacement. Le fichier des arrêts peut être transporté vers un appareil qui le fait.</translation>
    </message>
    <message>
        <source>No stop today</source>
        <translation>Aucun arrêt aujourd’hui</translation>
    </message>
    <message>
        <source>Traps to be seen to and fields to be scouted stand here on their day.</source>
        <translation>Les pièges à visiter et les champs à dépister s’affichent ici le jour venu.</translation>
    </message>
    <message>
        <source>Done changing</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Change the order, or mark infested fields</source>
        <translation>Modifier l’ordre, ou marquer les champs infestés</translation>
    </message>
    <message>
        <source>Suggest again</source>
        <translation>Suggérer de nouveau</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>RoundWords</name>
    <message>
        <source>Round of %1</source>
        <extracomment>a day, as the name of a file&apos;s content</extracomment>
        <translation>Tournée du %1</translation>
    </message>
    <message>
        <source>An order of stops by distance. It knows no road, gate or slough.</source>
        <translation>Un ordre des arrêts selon la distance. Il ne connaît ni route, ni barrière, ni marécage.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>what was done at a trap, and what was in it: &quot;counted, 12 moths&quot;</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, larvae</source>
        <extracomment>a field in which larvae are searched for</extracomment>
        <translation>%1, larves</translation>
    </message>
    <message>
        <source>a walk to go on with, %1</source>
        <translation>tournée de dépistage à reprendre, %1</translation>
    </message>
    <message>
        <source>walked, %1</source>
        <translation>dépistage fait, %1</translation>
    </message>
    <message>
        <source>one stop</source>
        <translation>un arrêt</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1 arrêts</translation>
    </message>
    <message>
        <source>%1 from the stop before.</source>
        <translation>À %1 de l’arrêt précédent.</translation>
    </message>
    <message>
        <source>%1 to the %2 of the stop before.</source>
        <extracomment>a distance and a point of the compass</extracomment>
        <translation>À %1 de l’arrêt précédent, direction %2.</translation>
    </message>
    <message>
        <source>About %1 in all, by straight lines.</source>
        <translation>Environ %1 en tout, en ligne droite.</translation>
    </message>
    <message>
        <source>About %1 in all, along the lines of the survey.</source>
        <translation>Environ %1 en tout, le long des lignes d’arpentage.</translation>
    </message>
    <message>
        <source>Stops without a place come last.</source>
        <translation>Les arrêts sans emplacement viennent en dernier.</translation>
    </message>
    <message>
        <source>A suggestion: it knows no road, gate or slough.</source>
        <translation>Une suggestion&#xa0;: elle ne connaît ni route, ni barrière, ni marécage.</translation>
    </message>
    <message>
        <source>No round when it is muddy: wet soil on boots and wheels goes along to the next field.</source>
        <translation>Pas de tournée dans la boue&#xa0;: le sol mouillé sur les bottes et les roues passe au champ suivant.</translation>
    </message>
    <message>
        <source>Boots and tools are cleaned between fields.</source>
        <translation>Les bottes et les outils sont nettoyés entre les champs.</translation>
    </message>
    <message>
        <source>One lure is to be changed: take it along closed, in a cool box.</source>
        <translation>Une phéromone est à remplacer&#xa0;: emportez-la fermée, dans une glacière.</translation>
    </message>
    <message>
        <source>%1 lures are to be changed: take them along closed, in a cool box.</source>
        <translation>%1 phéromones sont à remplacer&#xa0;: emportez-les fermées, dans une glacière.</translation>
    </message>
    <message>
        <source>Walking the traps of %1; %2; back by %3.</source>
        <extracomment>a programme&apos;s name, &quot;7 stops&quot;, a time of day</extracomment>
        <translation>Je fais la tournée des pièges de %1&#xa0;; %2&#xa0;; retour au plus tard à %3.</translation>
    </message>
    <message>
        <source>If I am not, call me.</source>
        <translation>Si je ne suis pas de retour, appelez-moi.</translation>
    </message>
    <message>
        <source>If I am not, call me or look here: %1</source>
        <translation>Si je ne suis pas de retour, appelez-moi ou cherchez ici&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>Routes</name>
    <message>
        <source>Today</source>
        <translation>Jour</translation>
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
        <translation>Larves</translation>
    </message>
</context>
<context>
    <name>RuleText</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 in %2, %3</source>
        <extracomment>&quot;9 moths in 2 nights, 30 Apr to 2 May&quot;</extracomment>
        <translation>%1 en %2, %3</translation>
    </message>
    <message>
        <source>Printed between sprays: %1.</source>
        <translation>Indiqué entre deux traitements&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 so far. %2.</source>
        <translation>%1 jusqu’ici. %2.</translation>
    </message>
    <message>
        <source>%1 in %2, as a mean of %3</source>
        <translation>%1 en %2, moyenne de %3</translation>
    </message>
    <message>
        <source>Highest: %1 in %2, %3. %4.</source>
        <translation>Maximum&#xa0;: %1 en %2, %3. %4.</translation>
    </message>
    <message>
        <source>%1 up to the peak, about %2. %3.</source>
        <translation>%1 jusqu’au pic, vers le %2. %3.</translation>
    </message>
    <message>
        <source>%1 so far. It is weighed at the peak of the flight, which is not known to be past.</source>
        <translation>%1 jusqu’ici. L’évaluation se fait au pic du vol, dont on ne sait pas s’il est passé.</translation>
    </message>
    <message>
        <source>%1 so far. It is weighed when half of the flight is over, and nobody can tell that from one trap.</source>
        <translation>%1 jusqu’ici. L’évaluation se fait quand la moitié du vol est passée, ce qu’un seul piège ne permet pas de dire.</translation>
    </message>
    <message>
        <source>over %1: %2</source>
        <translation>plus de %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>from %1: %2</source>
        <translation>à partir de %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Then: %1.</source>
        <translation>Alors&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Not reached so far: the rule waits for %1 in %2.</source>
        <translation>Pas atteint jusqu’ici&#xa0;: la règle attend %1 en %2.</translation>
    </message>
    <message>
        <source>%1: nobody can tell whether %2 came in %3. Count more often.</source>
        <translation>%1&#xa0;: on ne peut pas dire s’il y a eu %2 en %3. Faites des relevés plus fréquents.</translation>
    </message>
    <message>
        <source>%1: reached, for so many cannot have come without %2 in %3.</source>
        <translation>%1&#xa0;: atteint, car une telle capture suppose %2 en %3.</translation>
    </message>
    <message>
        <source>%1: reached. The rule waits for %2 in %3.</source>
        <translation>%1&#xa0;: atteint. La règle attend %2 en %3.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>From %1 on: %2.</source>
        <translation>À partir du %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 or more on %2 visits in a row, %3: reached.</source>
        <translation>%1 ou plus à %2 visites de suite, %3&#xa0;: atteint.</translation>
    </message>
    <message>
        <source>%1 of %2 visits in a row with %3 or more so far.</source>
        <translation>%1 visites de suite sur %2 avec %3 ou plus jusqu’ici.</translation>
    </message>
    <message>
        <source>A visit here covers more nights than the rule&apos;s %1.</source>
        <translation>Une visite couvre ici plus de nuits que les %1 de la règle.</translation>
    </message>
    <message>
        <source>Nothing counted yet that it could be held against.</source>
        <translation>Rien de compté encore à quoi appliquer la règle.</translation>
    </message>
    <message>
        <source>%1 degree-days °F</source>
        <translation>%1 degrés-jours °F</translation>
    </message>
    <message>
        <source>%1 degree-days °C</source>
        <translation>%1 degrés-jours °C</translation>
    </message>
</context>
<context>
    <name>SampleSheet</name>
    <message>
        <source>Sample %1</source>
        <translation>Échantillon %1</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>À qui</translation>
    </message>
    <message>
        <source>Sent today</source>
        <translation>Envoyé aujourd’hui</translation>
    </message>
    <message>
        <source>Received today</source>
        <translation>Reçu aujourd’hui</translation>
    </message>
    <message>
        <source>Named as</source>
        <translation>Identifié comme</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Par qui</translation>
    </message>
    <message>
        <source>Of %1, how many were the pest</source>
        <translation>Sur %1, combien étaient le ravageur</translation>
    </message>
    <message>
        <source>Named today: %1 the pest</source>
        <translation>Identifié aujourd’hui&#xa0;: %1 du ravageur</translation>
    </message>
    <message>
        <source>That was a mistake: one step back</source>
        <translation>C’était une erreur&#xa0;: un pas en arrière</translation>
    </message>
    <message>
        <source>History of its visit</source>
        <translation>Historique de sa visite</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Correct it, or see its history</source>
        <translation>Le corriger, ou voir son histoire</translation>
    </message>
    <message>
        <source>Those found to be the pest are added to the count of their visit. The count as it was made stays.</source>
        <translation>Ceux qui sont identifiés comme le ravageur s’ajoutent au nombre de leur visite. Le nombre d’origine reste.</translation>
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
        <translation>
            <numerusform>%n à identifier</numerusform>
            <numerusform>%n à identifier</numerusform>
        </translation>
    </message>
    <message>
        <source>No samples</source>
        <translation>Aucun échantillon</translation>
    </message>
    <message>
        <source>Those nobody was sure of in the field</source>
        <translation>Ceux dont personne n’était sûr au champ</translation>
    </message>
    <message>
        <source>What is counted as “not sure” becomes a numbered sample when the visit is kept.</source>
        <translation>Ce qui est compté comme «&#xa0;incertain&#xa0;» devient un échantillon numéroté quand la visite est enregistrée.</translation>
    </message>
</context>
<context>
    <name>Says</name>
    <message>
        <source>it stands</source>
        <translation>maintenu</translation>
    </message>
    <message>
        <source>it is open</source>
        <translation>à trancher</translation>
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
        <translation>Aucun relevé encore</translation>
    </message>
    <message>
        <source>Catch of the season</source>
        <translation>Capture de la saison</translation>
    </message>
    <message>
        <source>emptied uncounted</source>
        <translation>vidé sans relevé</translation>
    </message>
    <message>
        <source>no trap yet</source>
        <translation>pas encore de piège</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non compté</translation>
    </message>
    <message>
        <source>the visits stand in the list beside the chart</source>
        <translation>les visites figurent dans la liste à côté du graphique</translation>
    </message>
</context>
<context>
    <name>SeasonText</name>
    <message>
        <source>flight hardly begun</source>
        <translation>vol à peine commencé</translation>
    </message>
    <message>
        <source>flight about a quarter over</source>
        <translation>vol passé au quart environ</translation>
    </message>
    <message>
        <source>flight about half over</source>
        <translation>vol passé à moitié environ</translation>
    </message>
    <message>
        <source>flight about three quarters over</source>
        <translation>vol passé aux trois quarts environ</translation>
    </message>
    <message>
        <source>flight nearly over</source>
        <translation>vol presque terminé</translation>
    </message>
    <message>
        <source>flight %1 to %2 % over</source>
        <translation>part du vol passée&#xa0;: %1 à %2&#xa0;%</translation>
    </message>
    <message>
        <source>flight not known yet</source>
        <translation>vol pas encore connu</translation>
    </message>
    <message>
        <source>flight rising</source>
        <translation>vol en hausse</translation>
    </message>
    <message>
        <source>flight near its highest so far</source>
        <translation>vol près de son maximum jusqu’ici</translation>
    </message>
    <message>
        <source>flight past its highest so far</source>
        <translation>vol au-delà de son maximum jusqu’ici</translation>
    </message>
    <message>
        <source>one year</source>
        <translation>une année</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 années</translation>
    </message>
    <message>
        <source>%1 past trap seasons of %2</source>
        <translation>%1 saisons de piège passées sur %2</translation>
    </message>
    <message>
        <source>It was never counted.</source>
        <translation>Aucun relevé n’a été fait.</translation>
    </message>
    <message>
        <source>No band: the protocol does not say when a season is whole.</source>
        <translation>Pas de classe&#xa0;: le protocole ne dit pas quand une saison est complète.</translation>
    </message>
    <message>
        <source>No band: nobody noted the day of set-up.</source>
        <translation>Pas de classe&#xa0;: personne n’a noté le jour d’installation.</translation>
    </message>
    <message>
        <source>So there is no band: bands are for whole seasons.</source>
        <translation>Il n’y a donc pas de classe&#xa0;: les classes valent pour des saisons entières.</translation>
    </message>
    <message>
        <source>Was the trap emptied on %1? Until that is known the higher of the two counts stands.</source>
        <translation>Le piège a-t-il été vidé le %1&#xa0;? D’ici à ce qu’on le sache, le plus élevé des deux nombres est maintenu.</translation>
    </message>
    <message>
        <source>at least: the trap failed since it was last emptied</source>
        <translation>au moins&#xa0;: piège défaillant depuis le dernier vidage</translation>
    </message>
    <message>
        <source>at least: %1</source>
        <translation>au moins&#xa0;: %1</translation>
    </message>
    <message>
        <source>at least: trap %1</source>
        <translation>au moins&#xa0;: piège %1</translation>
    </message>
    <message>
        <source>no counts yet</source>
        <translation>aucun relevé encore</translation>
    </message>
    <message>
        <source>flight over</source>
        <translation>vol terminé</translation>
    </message>
    <message>
        <source>season likely %1</source>
        <translation>saison probable&#xa0;: %1</translation>
    </message>
    <message>
        <source>Too early to say where the season may end (%1).</source>
        <translation>Trop tôt pour dire où la saison peut finir (%1).</translation>
    </message>
    <message>
        <source>The likely range comes from %1. It knows nothing of this year’s weather.</source>
        <translation>L’intervalle probable vient de %1. Il ne sait rien de la météo de cette année.</translation>
    </message>
    <message>
        <source>Bands are for whole seasons: none until the flight is over.</source>
        <translation>Les classes valent pour des saisons entières&#xa0;: aucune avant la fin du vol.</translation>
    </message>
    <message>
        <source>Not in the total: %1 that nobody has named yet.</source>
        <translation>Pas dans le total&#xa0;: %1 à identifier.</translation>
    </message>
    <message>
        <source>Named samples are in the total.</source>
        <translation>Les échantillons identifiés sont dans le total.</translation>
    </message>
    <message>
        <source>The trap was moved on %1.</source>
        <translation>Le %1, le piège a été déplacé.</translation>
    </message>
    <message>
        <source>none caught</source>
        <translation>aucune capture</translation>
    </message>
    <message>
        <source>nights not known</source>
        <translation>nuits inconnues</translation>
    </message>
    <message>
        <source>emptied uncounted: those nights are lost</source>
        <translation>vidé sans relevé&#xa0;: ces nuits sont perdues</translation>
    </message>
    <message>
        <source>not emptied: the next count holds these too</source>
        <translation>non vidé&#xa0;: le prochain relevé les contient aussi</translation>
    </message>
    <message>
        <source>estimated, %1</source>
        <translation>estimé, %1</translation>
    </message>
    <message>
        <source>counted %1, named samples add %2</source>
        <translation>compté %1, les échantillons identifiés ajoutent %2</translation>
    </message>
    <message>
        <source>%1 not named yet</source>
        <translation>%1 à identifier</translation>
    </message>
    <message>
        <source>one count over %1</source>
        <translation>un seul relevé pour %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non compté</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>%1 of 7 nights counted</source>
        <translation>nuits comptées&#xa0;: %1 sur 7</translation>
    </message>
    <message>
        <source>derived: shared out by nights</source>
        <translation>calculé&#xa0;: réparti selon les nuits</translation>
    </message>
    <message>
        <source>at least: the trap failed</source>
        <translation>au moins&#xa0;: piège défaillant</translation>
    </message>
    <message>
        <source>a question is open</source>
        <translation>une question est ouverte</translation>
    </message>
    <message>
        <source>no %1 yet</source>
        <extracomment>&quot;no moths yet&quot;</extracomment>
        <translation>pas encore de %1</translation>
    </message>
    <message>
        <source>Set up on %1, after %2: it may have missed the first %3.</source>
        <translation>Installé le %1, après le %2&#xa0;: il a pu manquer des %3 du début.</translation>
    </message>
    <message>
        <source>Lost on %1, before %2: it missed the last %3.</source>
        <translation>Perdu le %1, avant le %2&#xa0;: il a manqué les %3 de la fin.</translation>
    </message>
    <message>
        <source>Ended on %1, before %2: it missed the last %3.</source>
        <translation>Terminé le %1, avant le %2&#xa0;: il a manqué les %3 de la fin.</translation>
    </message>
    <message>
        <source>Last counted on %1, before %2: the last %3 are not in.</source>
        <translation>Dernier relevé le %1, avant le %2&#xa0;: les %3 de la fin n’y sont pas.</translation>
    </message>
    <message>
        <source>Fewer %2 on %1 than at the visit before, though it was not emptied: the higher count stands.</source>
        <translation>Moins de %2 le %1 qu’à la visite précédente, bien que le piège n’ait pas été vidé&#xa0;: le nombre le plus élevé est maintenu.</translation>
    </message>
    <message>
        <source>%1 in the whole season</source>
        <extracomment>&quot;moths in the whole season&quot;</extracomment>
        <translation>%1 pour toute la saison</translation>
    </message>
    <message>
        <source>%1, part of the flight only</source>
        <translation>%1, une partie du vol seulement</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>%1 jusqu’ici</translation>
    </message>
    <message>
        <source>%1 %2 or more in a whole season</source>
        <translation>%1 %2 ou plus en une saison entière</translation>
    </message>
    <message>
        <source>%1 %2 in a whole season</source>
        <translation>%1 %2 en une saison entière</translation>
    </message>
    <message>
        <source>A heavy catch was estimated: %1 %2.</source>
        <translation>Une forte capture a été estimée&#xa0;: %1 %2.</translation>
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
        <translation>piège rehaussé</translation>
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
        <translation>volent peut-être déjà</translation>
    </message>
    <message>
        <source>about %1 to %2</source>
        <translation>environ du %1 au %2</translation>
    </message>
    <message>
        <source>the day of set-up</source>
        <translation>le jour de l’installation</translation>
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
        <source>Traps come down</source>
        <translation>Retrait des pièges</translation>
    </message>
    <message>
        <source>Traps came down</source>
        <translation>Pièges retirés</translation>
    </message>
    <message>
        <source>%1 lies outside the season of %2. Is the day right?</source>
        <translation>Le %1 est hors de la saison %2. Le jour est-il juste&#xa0;?</translation>
    </message>
    <message>
        <source>From %1 on it is late to set up a trap: it will show part of the flight only, and the season gets no band.</source>
        <translation>À partir du %1, il est tard pour installer un piège&#xa0;: il ne montrera qu’une partie du vol, et la saison n’aura pas de classe.</translation>
    </message>
    <message>
        <source>Traps usually stand by %1. This one may show part of the flight only, and then the season gets no band.</source>
        <translation>Les pièges sont d’habitude en place au plus tard le %1. Celui-ci peut ne montrer qu’une partie du vol, et la saison n’a alors pas de classe.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Still to come: %1.</source>
        <translation>Reste à faire&#xa0;: %1.</translation>
    </message>
    <message>
        <source>First %1</source>
        <extracomment>&quot;First moths&quot;</extracomment>
        <translation>Premiers individus (%1)</translation>
    </message>
</context>
<context>
    <name>SetupTrail</name>
    <message>
        <source>Who said yes to a trap here?</source>
        <translation>Qui a accepté un piège ici&#xa0;?</translation>
    </message>
    <message>
        <source>Where does it stand?</source>
        <translation>Où est-il&#xa0;?</translation>
    </message>
    <message>
        <source>What is around it?</source>
        <translation>Qu’y a-t-il autour&#xa0;?</translation>
    </message>
    <message>
        <source>A clean trap with its own tag</source>
        <translation>Un piège propre avec sa propre étiquette</translation>
    </message>
    <message>
        <source>Before you open the lure</source>
        <translation>Avant d’ouvrir la phéromone</translation>
    </message>
    <message>
        <source>First the lure</source>
        <translation>D’abord la phéromone</translation>
    </message>
    <message>
        <source>Then the killing strip</source>
        <translation>Puis la plaquette insecticide</translation>
    </message>
    <message>
        <source>Is the entrance above the canopy?</source>
        <translation>L’entrée est-elle au-dessus du couvert&#xa0;?</translation>
    </message>
    <message>
        <source>A last look</source>
        <translation>Un dernier coup d’œil</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Et ensuite</translation>
    </message>
    <message>
        <source>Which field is it for?</source>
        <translation>Pour quel champ&#xa0;?</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Champ</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>Trap</source>
        <translation>Piège</translation>
    </message>
    <message>
        <source>Lure</source>
        <translation>Phéromone</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Plaquette</translation>
    </message>
    <message>
        <source>Stake</source>
        <translation>Piquet</translation>
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
        <translation>Le tableau des %1 cadres est à la page suivante.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 de %2</translation>
    </message>
</context>
<context>
    <name>SizeTile</name>
    <message>
        <source>%1, %2: %3. One more.</source>
        <translation>%1, %2&#xa0;: %3. 1 de plus.</translation>
    </message>
    <message>
        <source>%1: one less</source>
        <translation>%1&#xa0;: 1 de moins</translation>
    </message>
</context>
<context>
    <name>SprayedSheet</name>
    <message>
        <source>Sprayed since the last visit?</source>
        <translation>Traitement depuis la dernière visite&#xa0;?</translation>
    </message>
    <message>
        <source>A spray can lower the catch. Ask the landowner when you do not know.</source>
        <translation>Un traitement peut réduire la capture. Demandez au propriétaire si vous ne savez pas.</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>With what</source>
        <translation>Avec quoi</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Re-entry time on its label</source>
        <translation>Délai de réentrée sur l’étiquette</translation>
    </message>
    <message>
        <source>h</source>
        <comment>hours</comment>
        <translation>h</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>StakePage</name>
    <message>
        <source>Height of the crop</source>
        <translation>Hauteur de la culture</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Height of the entrance</source>
        <translation>Hauteur de l’entrée</translation>
    </message>
    <message>
        <source>As the crop grows, the trap shall</source>
        <translation>Quand la culture pousse, le piège doit</translation>
    </message>
    <message>
        <source>stay at this height</source>
        <translation>rester à cette hauteur</translation>
    </message>
    <message>
        <source>rise with the crop</source>
        <translation>monter avec la culture</translation>
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
        <translation>Comment commencez-vous&#xa0;?</translation>
    </message>
    <message>
        <source>on my own</source>
        <translation>pour moi-même</translation>
    </message>
    <message>
        <source>for a group</source>
        <translation>pour un groupe</translation>
    </message>
    <message>
        <source>join by a code</source>
        <translation>avec un code</translation>
    </message>
    <message>
        <source>You are its coordinator, and invite the others afterwards. This device is its first main device.</source>
        <translation>Vous en assurez la coordination et invitez les autres ensuite. Cet appareil en est le premier appareil principal.</translation>
    </message>
    <message>
        <source>The traps are for</source>
        <translation>Les pièges visent</translation>
    </message>
    <message>
        <source>Preset: weeks from Monday to Sunday, counted on Monday, season %1</source>
        <translation>Préréglé&#xa0;: semaines du lundi au dimanche, relevé le lundi, saison %1</translation>
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
        <translation>Toutes les larves jusqu’ici, cadre après cadre.</translation>
    </message>
</context>
<context>
    <name>StripPage</name>
    <message>
        <source>The lure goes in first, so that gloves which held the strip never come near it.</source>
        <translation>La phéromone se met en premier, pour que les gants qui ont tenu la plaquette n’en approchent jamais.</translation>
    </message>
    <message>
        <source>Back to the lure</source>
        <translation>Retour à la phéromone</translation>
    </message>
    <message>
        <source>Before you open it</source>
        <translation>Avant de l’ouvrir</translation>
    </message>
    <message>
        <source>The trap cut open; the killing strip lies on the floor of the bucket</source>
        <translation>Le piège en coupe&#xa0;; la plaquette insecticide repose au fond du seau</translation>
    </message>
    <message>
        <source>The killing strip, on the floor of the bucket</source>
        <translation>La plaquette insecticide, au fond du seau</translation>
    </message>
    <message>
        <source>Then take these gloves off. Fresh ones for anything after.</source>
        <translation>Enlevez ensuite ces gants. Des gants neufs pour tout ce qui suit.</translation>
    </message>
    <message>
        <source>The strip is not in after all</source>
        <translation>La plaquette n’est finalement pas en place</translation>
    </message>
    <message>
        <source>Go on without the strip</source>
        <translation>Continuer sans la plaquette</translation>
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
        <translation>%1, %2 à trancher</translation>
    </message>
</context>
<context>
    <name>TallyKeys</name>
    <message>
        <source>%1: one less</source>
        <translation>%1&#xa0;: 1 de moins</translation>
    </message>
    <message>
        <source>%1: %2 more</source>
        <translation>%1&#xa0;: %2 de plus</translation>
    </message>
    <message>
        <source>%1: type the number</source>
        <translation>%1&#xa0;: saisir le nombre</translation>
    </message>
</context>
<context>
    <name>Temperatures</name>
    <message>
        <source>Bring in temperatures</source>
        <translation>Importer des températures</translation>
    </message>
    <message>
        <source>Records are being kept</source>
        <translation>Enregistrement des données en cours</translation>
    </message>
    <message>
        <source>A table as .csv, as weather services write it: the names of the columns in the first row, below it a day a row with its lowest and its highest temperature.</source>
        <translation>Un tableau .csv, comme l’écrivent les services météo&#xa0;: les noms des colonnes dans la première ligne, puis un jour par ligne avec la température la plus basse et la plus haute.</translation>
    </message>
    <message>
        <source>The file</source>
        <translation>Le fichier</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tableaux (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Voir le contenu</translation>
    </message>
    <message>
        <source>The file is being read.</source>
        <translation>Lecture du fichier en cours.</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Choisir un autre fichier</translation>
    </message>
    <message>
        <source>Nothing is kept yet. Choose another file</source>
        <translation>Rien n’est encore enregistré. Choisir un autre fichier</translation>
    </message>
    <message>
        <source>To be said first</source>
        <translation>À préciser d’abord</translation>
    </message>
    <message>
        <source>Degrees of the file</source>
        <translation>Degrés du fichier</translation>
    </message>
    <message>
        <source>Celsius</source>
        <translation>Celsius</translation>
    </message>
    <message>
        <source>Fahrenheit</source>
        <translation>Fahrenheit</translation>
    </message>
    <message>
        <source>Day or month first</source>
        <translation>Jour ou mois en premier</translation>
    </message>
    <message>
        <source>Day first</source>
        <translation>Jour en premier</translation>
    </message>
    <message>
        <source>Month first</source>
        <translation>Mois en premier</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Colonnes</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Le jour</translation>
    </message>
    <message>
        <source>The lowest temperature</source>
        <translation>La température la plus basse</translation>
    </message>
    <message>
        <source>The highest temperature</source>
        <translation>La température la plus haute</translation>
    </message>
</context>
<context>
    <name>TemperaturesStation</name>
    <message>
        <source>The weather station</source>
        <translation>La station météo</translation>
    </message>
    <message>
        <source>One that is known</source>
        <translation>Une station connue</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Son nom</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitude</translation>
    </message>
    <message>
        <source>Fields take the nearest station. As 52.1579, or with minutes; empty where it is known already.</source>
        <translation>Les champs prennent la station la plus proche. Sous la forme 52.1579, ou avec des minutes&#xa0;; vide si c’est déjà connu.</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Longitude</translation>
    </message>
    <message>
        <source>Its day ends at</source>
        <translation>Sa journée finit à</translation>
    </message>
    <message>
        <source>00:00, or 09:00 where it is read at nine. Kept with the station and said beside every sum.</source>
        <translation>00:00, ou 09:00 si la lecture se fait à neuf heures. Enregistré avec la station et indiqué à côté de chaque somme.</translation>
    </message>
</context>
<context>
    <name>ThankYou</name>
    <message>
        <source>one trap</source>
        <translation>un piège</translation>
    </message>
    <message>
        <source>%1 traps</source>
        <translation>%1 pièges</translation>
    </message>
    <message>
        <source>not summed</source>
        <translation>non totalisé</translation>
    </message>
    <message>
        <source>Thank you, %1</source>
        <translation>Merci, %1</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>fictif</translation>
    </message>
    <message>
        <source>In %1 you kept %2 for everybody who grows the crop around you.</source>
        <extracomment>a year, &quot;one trap&quot; or &quot;3 traps&quot;</extracomment>
        <translation>En %1, vous avez tenu %2 pour tous les producteurs de cette culture autour de vous.</translation>
    </message>
    <message>
        <source>It was visited on %1.</source>
        <translation>Le %1, une visite y a été faite.</translation>
    </message>
    <message>
        <source>That took %1 visits, from %2 to %3.</source>
        <translation>Il a fallu %1 visites, du %2 au %3.</translation>
    </message>
    <message>
        <source>They are part of the %1 visits by which %2 people together knew how the flight went.</source>
        <translation>Elles font partie des %1 visites grâce auxquelles %2 personnes ont su ensemble comment le vol se déroulait.</translation>
    </message>
    <message>
        <source>Trap</source>
        <translation>Piège</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visites</translation>
    </message>
    <message>
        <source>In the season</source>
        <translation>Dans la saison</translation>
    </message>
    <message>
        <source>That is</source>
        <translation>Soit</translation>
    </message>
    <message>
        <source>A week without a catch is worth as much as one with a great one: it tells others that they need not worry.</source>
        <translation>Une semaine sans capture vaut autant qu’une semaine de forte capture&#xa0;: elle dit aux autres qu’ils n’ont pas à s’inquiéter.</translation>
    </message>
    <message>
        <source>A catch tells of what flies, not of larvae: whether to act is decided by scouting, by the label, by local rules and with a licensed adviser.</source>
        <translation>Une capture renseigne sur ce qui vole, pas sur les larves&#xa0;: la décision d’agir vient du dépistage, de l’étiquette, de la réglementation locale et d’un conseiller agréé.</translation>
    </message>
    <message>
        <source>%1: %2 visits, %3</source>
        <translation>%1&#xa0;: %2 visites, %3</translation>
    </message>
</context>
<context>
    <name>Threshold</name>
    <message>
        <source>%1 %2/ac</source>
        <translation>%1 %2/ac</translation>
    </message>
    <message>
        <source>%1 %2/ha</source>
        <translation>%1 %2/ha</translation>
    </message>
    <message>
        <source>%1 %2/bu</source>
        <translation>%1 %2/bu</translation>
    </message>
    <message>
        <source>%1 %2/t</source>
        <translation>%1 %2/t</translation>
    </message>
    <message>
        <source>%1 ha/ac</source>
        <extracomment>hectares in an acre; all digits, for it is exact</extracomment>
        <translation>%1 ha/ac</translation>
    </message>
    <message>
        <source>%1 t/bu</source>
        <translation>%1 t/bu</translation>
    </message>
    <message>
        <source>%1 bu/ac for each larva/m²</source>
        <translation>%1 bu/ac par larve/m²</translation>
    </message>
    <message>
        <source>%1 %2/ac for each larva/m²</source>
        <translation>%1 %2/ac par larve/m²</translation>
    </message>
    <message>
        <source>%1 larvae/m²</source>
        <translation>%1 larves/m²</translation>
    </message>
    <message>
        <source>%1 larvae a frame</source>
        <translation>%1 larves par cadre</translation>
    </message>
    <message>
        <source>%1 m² a frame</source>
        <translation>%1 m² par cadre</translation>
    </message>
    <message>
        <source>%1, but at least %2</source>
        <translation>%1, mais au moins %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>The economic threshold is %1 (about %2), or %3.</source>
        <translation>Le seuil économique est de %1 (environ %2), soit %3.</translation>
    </message>
    <message>
        <source>One larva on each square metre costs %1, which is %2.</source>
        <translation>Une larve par mètre carré coûte %1, soit %2.</translation>
    </message>
    <message>
        <source>Cost of control</source>
        <translation>Coût du traitement</translation>
    </message>
    <message>
        <source>Cost on an acre</source>
        <translation>Coût à l’acre</translation>
    </message>
    <message>
        <source>Price of a bushel</source>
        <translation>Prix du boisseau</translation>
    </message>
    <message>
        <source>Loss to one larva on each square metre</source>
        <translation>Perte par larve au mètre carré</translation>
    </message>
    <message>
        <source>Larvae whose loss equals the cost</source>
        <translation>Larves dont la perte égale le coût</translation>
    </message>
    <message>
        <source>In a dry season</source>
        <translation>En saison sèche</translation>
    </message>
    <message>
        <source>Not below the floor</source>
        <translation>Pas sous le plancher</translation>
    </message>
    <message>
        <source>In one frame</source>
        <translation>Dans un cadre</translation>
    </message>
    <message>
        <source>The price lies below those of the published table (%1): computed, not published.</source>
        <translation>Le prix est inférieur à ceux du tableau publié (%1)&#xa0;: calculé, non publié.</translation>
    </message>
    <message>
        <source>The price lies above those of the published table (%1): computed, not published.</source>
        <translation>Le prix est supérieur à ceux du tableau publié (%1)&#xa0;: calculé, non publié.</translation>
    </message>
    <message>
        <source>The cost lies below those of the published table (%1): computed, not published.</source>
        <translation>Le coût est inférieur à ceux du tableau publié (%1)&#xa0;: calculé, non publié.</translation>
    </message>
    <message>
        <source>The cost lies above those of the published table (%1): computed, not published.</source>
        <translation>Le coût est supérieur à ceux du tableau publié (%1)&#xa0;: calculé, non publié.</translation>
    </message>
    <message>
        <source>No published threshold is so low (%1): whether so few larvae do harm has not been shown.</source>
        <translation>Aucun seuil publié n’est aussi bas (%1)&#xa0;: il n’est pas démontré que si peu de larves nuisent.</translation>
    </message>
    <message>
        <source>No published threshold is so high (%1).</source>
        <translation>Aucun seuil publié n’est aussi élevé (%1).</translation>
    </message>
    <message>
        <source>The published table is in other dollars; the formula is the same.</source>
        <translation>Le tableau publié est dans d’autres dollars&#xa0;; la formule est la même.</translation>
    </message>
    <message>
        <source>You called this a dry season: the usual threshold, %1, is divided by %2.</source>
        <translation>Vous avez dit que la saison est sèche&#xa0;: le seuil habituel, %1, est divisé par %2.</translation>
    </message>
    <message>
        <source>Nobody has published a divisor for a dry season.</source>
        <translation>Personne n’a publié de diviseur pour une saison sèche.</translation>
    </message>
    <message>
        <source>The divisor is your own; the published one is %1.</source>
        <translation>Le diviseur est le vôtre&#xa0;; celui qui est publié est %1.</translation>
    </message>
    <message>
        <source>The formula gives no more than the lowest threshold that holds, so that one stands.</source>
        <translation>La formule ne dépasse pas le plus bas seuil admis&#xa0;; c’est donc celui-ci qui vaut.</translation>
    </message>
    <message>
        <source>The frame is your own, %1.</source>
        <translation>Le cadre est le vôtre, %1.</translation>
    </message>
    <message>
        <source>If you call the season very dry, the published divisor of %1 gives %2; that is yours to choose.</source>
        <translation>Si vous jugez la saison très sèche, le diviseur publié de %1 donne %2&#xa0;; le choix vous appartient.</translation>
    </message>
</context>
<context>
    <name>ThresholdTable</name>
    <message>
        <source>Around your numbers: larvae per m²</source>
        <translation>Autour de vos chiffres&#xa0;: larves par m²</translation>
    </message>
    <message>
        <source>Down: cost in %1. Across: price in %2. ▲ above the threshold, ▽ below, ● too close. Touch a number to take it, or draw the dark one there.</source>
        <translation>De haut en bas&#xa0;: coût en %1. De gauche à droite&#xa0;: prix en %2. ▲ au-dessus du seuil, ▽ en dessous, ● trop proche. Touchez un nombre pour le prendre, ou faites-y glisser la case foncée.</translation>
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
        <translation>La tournée du jour</translation>
    </message>
    <message>
        <source>Scout the field</source>
        <translation>Dépister le champ</translation>
    </message>
    <message>
        <source>Only on this phone: one entry of yours</source>
        <translation>Sur ce téléphone seulement&#xa0;: une de vos saisies</translation>
    </message>
    <message>
        <source>Only on this phone: %1 entries of yours</source>
        <translation>Sur ce téléphone seulement&#xa0;: %1 de vos saisies</translation>
    </message>
    <message>
        <source>You have entered nothing yet</source>
        <translation>Vous n’avez encore rien saisi</translation>
    </message>
    <message>
        <source>All you entered is handed over</source>
        <translation>Toutes vos saisies sont remises</translation>
    </message>
    <message>
        <source>All you entered is at the hub</source>
        <translation>Toutes vos saisies sont sur le serveur</translation>
    </message>
    <message>
        <source>All you entered is handed over or at the hub</source>
        <translation>Toutes vos saisies sont remises ou sur le serveur</translation>
    </message>
    <message>
        <source>A trap</source>
        <translation>Un piège</translation>
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
        <translation>%1 en une saison entière d’un piège&#xa0;: %2 (classe %3 sur %4, %5).</translation>
    </message>
    <message>
        <source>By the protocol %1 %2 for the trap type %3. Source: %4</source>
        <translation>Selon le protocole %1 %2 pour le type de piège %3. Source&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1 is sound: %2 changes, all readable and without a gap, and the tables are what they come to.</source>
        <translation>%1 est fiable&#xa0;: %2 modifications, toutes lisibles et sans lacune, et les tables leur correspondent.</translation>
    </message>
    <message>
        <source>%1 is not sound. Keep a copy of it as it is.</source>
        <translation>%1 n’est pas fiable. Gardez-en une copie tel quel.</translation>
    </message>
    <message>
        <source>The file itself is damaged: %1</source>
        <translation>Le fichier lui-même est endommagé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Changes in the log that cannot be read: %1 of %2.</source>
        <translation>Modifications illisibles dans le journal&#xa0;: %1 sur %2.</translation>
    </message>
    <message>
        <source>Changes missing from the log: %1.</source>
        <translation>Modifications manquantes dans le journal&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The tables differ from what the log comes to. Nothing in the log is lost; the tables have to be folded again.</source>
        <translation>Les tables diffèrent de ce que donne le journal. Rien n’est perdu dans le journal&#xa0;; les tables doivent être reconstruites.</translation>
    </message>
    <message>
        <source>An invented district, with everybody and everything in it, as on %1.</source>
        <translation>Un district inventé, avec tous ses gens et tout ce qu’il contient, au %1.</translation>
    </message>
    <message>
        <source>Kept in %1: %2 traps and %3 visits over %4 seasons.</source>
        <translation>Enregistré dans %1&#xa0;: %2 pièges et %3 visites sur %4 saisons.</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>id</source>
        <translation>id</translation>
    </message>
    <message>
        <source>This device is the grower&apos;s.</source>
        <translation>Cet appareil est celui du producteur.</translation>
    </message>
    <message>
        <source>Nothing is due today.</source>
        <translation>Rien à faire aujourd’hui.</translation>
    </message>
    <message>
        <source>In the next six days</source>
        <translation>Dans les six prochains jours</translation>
    </message>
    <message>
        <source>%1 or higher</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>Bands are for whole seasons, by the protocol %1 %2.</source>
        <translation>Les classes valent pour une saison entière, selon le protocole %1 %2.</translation>
    </message>
    <message>
        <source>Season %1, as on %2</source>
        <translation>Saison %1, au %2</translation>
    </message>
    <message>
        <source>district</source>
        <translation>district</translation>
    </message>
    <message>
        <source>trap</source>
        <translation>piège</translation>
    </message>
    <message>
        <source>set up</source>
        <translation>installé</translation>
    </message>
    <message>
        <source>counted to</source>
        <translation>relevé jusqu’au</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>capture</translation>
    </message>
    <message>
        <source>of what</source>
        <translation>de quoi</translation>
    </message>
    <message>
        <source>band</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>%1. See %2 --help.</source>
        <translation>%1. Voir %2 --help.</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>cadres</translation>
    </message>
    <message>
        <source>below at most</source>
        <translation>en dessous, au plus</translation>
    </message>
    <message>
        <source>above at least</source>
        <translation>au-dessus, au moins</translation>
    </message>
    <message>
        <source>larvae per m²</source>
        <translation>larves par m²</translation>
    </message>
    <message>
        <source>below %</source>
        <translation>en dessous&#xa0;%</translation>
    </message>
    <message>
        <source>open %</source>
        <translation>indécis&#xa0;%</translation>
    </message>
    <message>
        <source>above %</source>
        <translation>au-dessus&#xa0;%</translation>
    </message>
    <message>
        <source>frames on average</source>
        <translation>cadres en moyenne</translation>
    </message>
    <message>
        <source>How patchy the larvae of this pest lie nobody has published. In patchier fields (k = %1):</source>
        <translation>Personne n’a publié à quel point les larves de ce ravageur sont groupées. Dans les champs où elles le sont davantage (k = %1)&#xa0;:</translation>
    </message>
    <message>
        <source>For a threshold of %1 (%2 a frame): count at least %3 frames, expect %4, and stop when all larvae together are about %5 or more away from %2 times the frames. After %6 frames the field is near the threshold and stays open.</source>
        <translation>Pour un seuil de %1 (%2 par cadre)&#xa0;: comptez au moins %3 cadres, prévoyez-en %4, et arrêtez quand le total des larves s’écarte d’environ %5 ou plus de %2 fois le nombre de cadres. Après %6 cadres, le champ est près du seuil et reste indécis.</translation>
    </message>
    <message>
        <source>infested</source>
        <translation>infesté</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>arrêt</translation>
    </message>
    <message>
        <source>from the last</source>
        <translation>depuis le précédent</translation>
    </message>
    <message>
        <source>towards</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en tout</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>Clean boots and wheels after an infested field.</source>
        <translation>Nettoyez les bottes et les roues après un champ infesté.</translation>
    </message>
    <message>
        <source>There is no stop to make.</source>
        <translation>Il n’y a aucun arrêt à faire.</translation>
    </message>
    <message>
        <source>A suggestion: %1 along a square grid. No road is known here.</source>
        <translation>Une suggestion&#xa0;: %1 en suivant un quadrillage. Aucune route n’est connue ici.</translation>
    </message>
    <message>
        <source>A suggestion: %1 in straight lines. Roads are longer, and none is known here.</source>
        <translation>Une suggestion&#xa0;: %1 en ligne droite. Les routes sont plus longues, et aucune n’est connue ici.</translation>
    </message>
    <message>
        <source>The way back to the start is part of the length.</source>
        <translation>Le retour au départ est compris dans la longueur.</translation>
    </message>
    <message>
        <source>Due as well, but nobody has noted its place: %1.</source>
        <translation>À faire aussi, mais personne n’en a noté l’emplacement&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Order of the stops: a suggestion</source>
        <translation>Ordre des arrêts&#xa0;: une suggestion</translation>
    </message>
    <message>
        <source>How it is worked out</source>
        <translation>Comment il est calculé</translation>
    </message>
    <message>
        <source>Larvae/m² at other costs (down) and prices (across)</source>
        <translation>Larves/m² à d’autres coûts (de haut en bas) et prix (de gauche à droite)</translation>
    </message>
    <message>
        <source>* not within the published table: computed, not published</source>
        <translation>* hors du tableau publié&#xa0;: calculé, non publié</translation>
    </message>
    <message>
        <source>The loss comes from trials of %1 to %2; varieties in them: %3.</source>
        <translation>La perte vient d’essais menés de %1 à %2&#xa0;; variétés à l’essai&#xa0;: %3.</translation>
    </message>
    <message>
        <source>By the protocol %1 %2. Source: %3</source>
        <translation>Selon le protocole %1 %2. Source&#xa0;: %3</translation>
    </message>
    <message>
        <source>How often walks by this rule err where larvae are as patchy as assumed (k = %1):</source>
        <translation>Fréquence d’erreur des tournées de dépistage selon cette règle, si les larves sont aussi groupées que supposé (k = %1)&#xa0;:</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>Rien ne diffère.</translation>
    </message>
    <message>
        <source>Kept aside: a change of %1 %2 (%3), %4.</source>
        <translation>Mis de côté&#xa0;: une modification, %1 %2 (%3), %4.</translation>
    </message>
    <message>
        <source>A coordinator let it stand, and it was changed since: %1 %2.</source>
        <translation>Changement depuis la décision de maintenir&#xa0;: %1 %2.</translation>
    </message>
    <message>
        <source>The device %1 has ended. Its %2 changes that arrived here count; what it writes later is kept aside.</source>
        <translation>L’appareil %1 a été retiré. Ses %2 modifications arrivées ici comptent&#xa0;; ce qu’il écrit ensuite est mis de côté.</translation>
    </message>
    <message>
        <source>An invitation for %1, good until %2. It is shown only now:</source>
        <translation>Une invitation pour %1, valable jusqu’au %2. Elle n’est montrée que maintenant&#xa0;:</translation>
    </message>
    <message>
        <source>Exchange once before it is used, so that it lies where it will be looked for.</source>
        <translation>Faites un échange avant qu’elle serve, pour qu’elle soit là où on la cherchera.</translation>
    </message>
    <message>
        <source>Records that came along: %1. Photographs: %2.</source>
        <translation>Enregistrements repris&#xa0;: %1. Photos&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Records that were here already, and stay as they are: %1.</source>
        <translation>Enregistrements déjà ici, laissés tels quels&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Photographs that are missing beside the old store: %1.</source>
        <translation>Photos manquantes à côté de l’ancien registre&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Sites that another member kept, and that are yours now: %1.</source>
        <translation>Sites qu’un autre membre suivait et qui sont maintenant les vôtres&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The programme has no district %1. Ask the coordinator to let it in, or to add it.</source>
        <translation>Le programme n’a pas de district %1. Demandez à la coordination de l’admettre ou de l’ajouter.</translation>
    </message>
    <message>
        <source>The programme has no season %1 yet. Your records of it lie ready.</source>
        <translation>Le programme n’a pas encore de saison %1. Vos enregistrements de cette saison sont prêts.</translation>
    </message>
    <message>
        <source>The programme does not use %1 in each of those seasons.</source>
        <translation>Le programme n’utilise pas %1 dans chacune de ces saisons.</translation>
    </message>
    <message>
        <source>You are in %1. The store is %2.</source>
        <translation>Vous êtes dans %1. Le registre est %2.</translation>
    </message>
    <message>
        <source>Write a file with exchange --write and carry it back, so that the others know you.</source>
        <translation>Écrivez un fichier avec exchange --write et rapportez-le, pour que les autres vous connaissent.</translation>
    </message>
    <message>
        <source>ended after change %1</source>
        <translation>retiré après la modification %1</translation>
    </message>
    <message>
        <source>founding</source>
        <translation>fondateur</translation>
    </message>
    <message>
        <source>in</source>
        <translation>admis</translation>
    </message>
    <message>
        <source>in by its invitation</source>
        <translation>admis par son invitation</translation>
    </message>
    <message>
        <source>device</source>
        <translation>appareil</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>situation</translation>
    </message>
    <message>
        <source>stream</source>
        <translation>numéro</translation>
    </message>
    <message>
        <source>An invitation for %1 is open until %2.</source>
        <translation>Une invitation pour %1 est ouverte jusqu’au %2.</translation>
    </message>
    <message>
        <source>%1 has begun, in %2. This device founded it.</source>
        <translation>%1 a commencé, dans %2. C’est cet appareil qui en est le fondateur.</translation>
    </message>
    <message>
        <source>%1 is at the hub %2 now.</source>
        <translation>%1 est maintenant sur le serveur %2.</translation>
    </message>
    <message>
        <source>It is settled. The others see it after an exchange.</source>
        <translation>C’est tranché. Les autres le verront après un échange.</translation>
    </message>
    <message>
        <source>Bundles handed over: %1. Bundles that came in: %2, with %3 changes.</source>
        <translation>Paquets remis&#xa0;: %1. Paquets reçus&#xa0;: %2, avec %3 modifications.</translation>
    </message>
    <message>
        <source>Photographs handed over: %1.</source>
        <translation>Photos remises&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Photographs that came in: %1.</source>
        <translation>Photos reçues&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Devices that were let in: %1.</source>
        <translation>Appareils admis&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Bundles that wait for an earlier one: %1.</source>
        <translation>Paquets qui en attendent un antérieur&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Files that are not finished copying: %1. Exchange again later.</source>
        <translation>Fichiers dont la copie n’est pas terminée&#xa0;: %1. Refaites un échange plus tard.</translation>
    </message>
    <message>
        <source>Files that were refused and kept aside beside the store: %1.</source>
        <translation>Fichiers refusés et mis de côté près du registre&#xa0;: %1.</translation>
    </message>
    <message>
        <source>One device wrote two different histories, as a copied store does. Both are kept and used.</source>
        <translation>Un appareil a écrit deux historiques différents, comme le fait un registre copié. Les deux sont conservés et utilisés.</translation>
    </message>
    <message>
        <source>a trap not known here</source>
        <translation>un piège inconnu ici</translation>
    </message>
    <message>
        <source>No record of this season gets a flag.</source>
        <translation>Aucun enregistrement de cette saison ne reçoit de signalement.</translation>
    </message>
    <message>
        <source>Published for the first time. The week is frozen from now on.</source>
        <translation>Publié pour la première fois. La semaine est figée à partir de maintenant.</translation>
    </message>
    <message>
        <source>As it was published: issue %1. Traps that have changed since: %2.</source>
        <translation>Tel que publié&#xa0;: édition %1. Pièges qui ont changé depuis&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Published again as issue %1. Traps whose change still waits: %2.</source>
        <translation>Publié de nouveau, édition %1. Pièges dont le changement attend encore&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The counts of this week are not all due yet, and a published week is frozen. Publish it when it is over.</source>
        <translation>Certains relevés de cette semaine ne sont pas encore échus, et une semaine publiée est figée. Publiez-la quand elle sera terminée.</translation>
    </message>
    <message>
        <source>No new issue: counts have changed at %1 traps, and nowhere at those of five farms or more. A new issue would show whose they are.</source>
        <translation>Pas de nouvelle édition&#xa0;: des relevés ont changé à %1 pièges, mais nulle part à ceux d’au moins cinq fermes. Une nouvelle édition montrerait à qui ils sont.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>no district</source>
        <translation>aucun district</translation>
    </message>
    <message>
        <source>counted in full</source>
        <translation>relevés en entier</translation>
    </message>
    <message>
        <source>a minimum</source>
        <translation>un minimum</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non compté</translation>
    </message>
    <message>
        <source>median</source>
        <translation>médiane</translation>
    </message>
    <message>
        <source>middle half</source>
        <translation>moitié centrale</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>at the trap</source>
        <translation>au piège</translation>
    </message>
    <message>
        <source>all</source>
        <translation>ensemble</translation>
    </message>
    <message>
        <source>median of the week to</source>
        <translation>médiane de la semaine se terminant le</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Between the traps nothing is drawn: %1 traps with a place and a full count are fewer than 20.</source>
        <translation>Entre les pièges, rien n’est tracé&#xa0;: %1 pièges avec un emplacement et un relevé complet, c’est moins que 20.</translation>
    </message>
    <message>
        <source>Between the traps nothing is drawn: all caught the same.</source>
        <translation>Entre les pièges, rien n’est tracé&#xa0;: tous ont pris autant.</translation>
    </message>
    <message>
        <source>Between the traps nothing is drawn: what a trap catches is told by its neighbours only %1 % better than by the mean of all; 5 % is the least.</source>
        <translation>Entre les pièges, rien n’est tracé&#xa0;: les voisins n’indiquent la capture d’un piège que %1&#xa0;% mieux que la moyenne de tous&#xa0;; il faut au moins 5&#xa0;%.</translation>
    </message>
    <message>
        <source>Between the traps a surface may be drawn: neighbours tell what a trap catches %1 % better than the mean of all. Larvae vary between neighbouring fields all the same.</source>
        <translation>Entre les pièges, une surface peut être tracée&#xa0;: les voisins indiquent la capture d’un piège %1&#xa0;% mieux que la moyenne de tous. Les larves varient tout de même entre champs voisins.</translation>
    </message>
    <message>
        <source>For the desk: it names traps. Publish none of it as it stands.</source>
        <translation>Pour le bureau&#xa0;: des pièges y sont nommés. N’en publiez rien tel quel.</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>at the widest</source>
        <translation>au plus large</translation>
    </message>
    <message>
        <source>how known</source>
        <translation>certitude</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>interpolated</source>
        <translation>interpolé</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>degree-days</source>
        <translation>degrés-jours</translation>
    </message>
    <message>
        <source>total</source>
        <translation>total</translation>
    </message>
    <message>
        <source>Nothing was measured from %1 to %2: %3 days are not in the sum, which is a minimum.</source>
        <translation>Rien n’a été mesuré du %1 au %2&#xa0;: %3 jours manquent à la somme, qui est un minimum.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>quelqu’un</translation>
    </message>
    <message>
        <source>    %1 asked %2, %3: %4</source>
        <extracomment>names, a day, and what was asked</extracomment>
        <translation>    %1 a demandé à %2, %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>    No answer yet.</source>
        <translation>    Pas encore de réponse.</translation>
    </message>
    <message>
        <source>    %1 answered, %2: %3</source>
        <extracomment>a name, a day, and what was answered</extracomment>
        <translation>    %1 a répondu, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Asked and not settled: %1.</source>
        <translation>Demandé et non réglé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>expected only</source>
        <translation>attendu seulement</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>indéterminé</translation>
    </message>
    <message>
        <source>early</source>
        <translation>au début</translation>
    </message>
    <message>
        <source>around the peak</source>
        <translation>autour du pic</translation>
    </message>
    <message>
        <source>past the peak</source>
        <translation>après le pic</translation>
    </message>
    <message>
        <source>The peak is in degree-days (%1), with the days that reach it.</source>
        <translation>Le pic est en degrés-jours (%1), avec les jours qui l’atteignent.</translation>
    </message>
    <message>
        <source>%1: left out, its nearest station has no temperatures that reach over the flight. Bring in this year’s and past years with “duskrow-tool temperatures”.</source>
        <translation>%1&#xa0;: écarté, sa station la plus proche n’a pas de températures qui couvrent le vol. Importez celles de cette année et des années passées avec «&#xa0;duskrow-tool temperatures&#xa0;».</translation>
    </message>
    <message>
        <source>trap or district</source>
        <translation>piège ou district</translation>
    </message>
    <message>
        <source>moths</source>
        <translation>papillons</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>vol</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>pic</translation>
    </message>
    <message>
        <source>over by the last count</source>
        <translation>passé au dernier relevé</translation>
    </message>
    <message>
        <source>Ranges hold nine times in ten where flights are as in the model. Past years of this store in it: %1.</source>
        <translation>Les fourchettes sont justes neuf fois sur dix quand les vols suivent le modèle. Années passées de ce registre dans le modèle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Kept: %1 of %2 records.</source>
        <translation>Enregistrés&#xa0;: %1 enregistrements sur %2.</translation>
    </message>
    <message>
        <source>Stopped. The same import again adds what is missing.</source>
        <translation>Arrêté. La même importation, refaite, ajoute ce qui manque.</translation>
    </message>
    <message>
        <source>Nothing was kept.</source>
        <translation>Rien n’a été enregistré.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>%1 is sound: %2 (%3), protocol %4 %5.</source>
        <translation>%1 est fiable&#xa0;: %2 (%3), protocole %4 %5.</translation>
    </message>
    <message>
        <source>Trap type %1: rules %2; bands of a whole season: %3.</source>
        <translation>Type de piège %1&#xa0;: règles %2&#xa0;; classes d’une saison entière&#xa0;: %3.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Rules for the crop: %1.</source>
        <translation>Règles pour la culture&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The rule %1 has the shape %2, which this version does not understand. It is kept and not used.</source>
        <translation>La règle %1 a la forme %2, que cette version ne comprend pas. Elle est conservée et n’est pas utilisée.</translation>
    </message>
    <message>
        <source>not published</source>
        <translation>non publié</translation>
    </message>
    <message>
        <source>%1 is not sound.</source>
        <translation>%1 n’est pas fiable.</translation>
    </message>
    <message>
        <source>Line %1: %2.</source>
        <translation>Ligne %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Field: %1</source>
        <translation>Champ&#xa0;: %1</translation>
    </message>
    <message>
        <source>Day: “%1”. Lowest: “%2”. Highest: “%3”. Degrees: %4.</source>
        <translation>Jour&#xa0;: «&#xa0;%1&#xa0;». Minimum&#xa0;: «&#xa0;%2&#xa0;». Maximum&#xa0;: «&#xa0;%3&#xa0;». Degrés&#xa0;: %4.</translation>
    </message>
    <message>
        <source>A day of the station ends at %1.</source>
        <translation>Un jour de la station se termine à %1.</translation>
    </message>
    <message>
        <source>Days: %1 new, %2 there already, %3 refused.</source>
        <translation>Jours&#xa0;: %1 nouveaux, %2 déjà là, %3 refusés.</translation>
    </message>
    <message>
        <source>Kept: %1 records.</source>
        <translation>Enregistrés&#xa0;: %1 enregistrements.</translation>
    </message>
    <message>
        <source>    %1 %2 stays: it was changed since.</source>
        <translation>    %1 %2 reste&#xa0;: changement depuis.</translation>
    </message>
    <message>
        <source>    %1 %2 stays: something that stays belongs to it.</source>
        <translation>    %1 %2 reste&#xa0;: un élément qui reste en dépend.</translation>
    </message>
    <message>
        <source>%1 of %2 kept</source>
        <translation>%1 sur %2 enregistrés</translation>
    </message>
    <message>
        <source>Of the import %1 is taken back: %2</source>
        <translation>Annulé de l’importation %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>A dry run: nothing was taken back.</source>
        <translation>Essai à blanc&#xa0;: rien n’a été annulé.</translation>
    </message>
    <message>
        <source>    and %1 more; --json names them.</source>
        <translation>    et %1 de plus&#xa0;; --json les nomme.</translation>
    </message>
    <message>
        <source>column</source>
        <translation>colonne</translation>
    </message>
    <message>
        <source>is</source>
        <translation>contient</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importation</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>Encodage</translation>
    </message>
    <message>
        <source>Delimiter</source>
        <translation>Séparateur</translation>
    </message>
    <message>
        <source>Day or month first</source>
        <translation>Jour ou mois en premier</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Séparateur décimal</translation>
    </message>
    <message>
        <source>Pest</source>
        <translation>Ravageur</translation>
    </message>
    <message>
        <source>%1, protocol version %2, trap type %3</source>
        <translation>%1, version du protocole %2, type de piège %3</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Donne</translation>
    </message>
    <message>
        <source>Rows already there</source>
        <translation>Lignes déjà là</translation>
    </message>
    <message>
        <source>Rows said twice</source>
        <translation>Lignes en double</translation>
    </message>
    <message>
        <source>Traps whose day of set-up nobody says</source>
        <translation>Pièges sans jour d’installation</translation>
    </message>
    <message>
        <source>Rows to look at</source>
        <translation>Lignes à regarder</translation>
    </message>
    <message>
        <source>Rows refused</source>
        <translation>Lignes refusées</translation>
    </message>
    <message>
        <source>No trap stood out in this week. Choose another.</source>
        <translation>Aucun piège n’était en place cette semaine-là. Choisissez-en une autre.</translation>
    </message>
    <message>
        <source>The text is the one given now; the figures stay as they were published.</source>
        <translation>Le texte est celui donné maintenant&#xa0;; les chiffres restent tels qu’ils ont été publiés.</translation>
    </message>
    <message>
        <source>No boundary in the file bears the name of: %1.</source>
        <translation>Aucune limite du fichier ne porte le nom de&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A look only: nothing was kept, and the week is not published.</source>
        <translation>Aperçu seulement&#xa0;: rien n’a été enregistré et la semaine n’est pas publiée.</translation>
    </message>
    <message>
        <source>Traps emptied at each count</source>
        <translation>Pièges vidés à chaque relevé</translation>
    </message>
    <message>
        <source>    Visit %1</source>
        <translation>    Visite %1</translation>
    </message>
    <message>
        <source>Flags: %1. A flag asks to look; it changes no record. To ask, correct, leave out or let stand, open the desk of the week in the app.</source>
        <translation>Signalements&#xa0;: %1. Un signalement demande de regarder&#xa0;; il ne change aucun enregistrement. Pour demander, corriger, écarter ou maintenir, ouvrez le bureau de la semaine dans l’application.</translation>
    </message>
    <message>
        <source>Nothing was imported on this device.</source>
        <translation>Rien n’a été importé sur cet appareil.</translation>
    </message>
    <message>
        <source>The station is here already: its place or the end of its day is changed to what was given.</source>
        <translation>La station est déjà ici&#xa0;: son lieu ou la fin de sa journée sont remplacés par ce qui a été donné.</translation>
    </message>
    <message>
        <source>New districts</source>
        <translation>Nouveaux districts</translation>
    </message>
    <message>
        <source>New sites</source>
        <translation>Nouveaux sites</translation>
    </message>
    <message>
        <source>Each count is shared out over its nights. A bulletin takes only full counts of seven nights, made round: its medians may differ.</source>
        <translation>Chaque relevé est réparti sur ses nuits. Un bulletin ne retient que les relevés complets de sept nuits, arrondis : ses médianes peuvent différer.</translation>
    </message>
</context>
<context>
    <name>Trap</name>
    <message>
        <source>trap without a tag</source>
        <translation>piège sans étiquette</translation>
    </message>
    <message>
        <source>%1 moth</source>
        <extracomment>a pest, in the singular: &quot;bertha armyworm moth&quot;</extracomment>
        <translation>papillon de %1</translation>
    </message>
    <message>
        <source>%1 moths</source>
        <extracomment>a pest, in the plural: &quot;bertha armyworm moths&quot;</extracomment>
        <translation>papillons de %1</translation>
    </message>
</context>
<context>
    <name>TrapPage</name>
    <message>
        <source>Tag, as written on the trap</source>
        <translation>Étiquette, telle qu’écrite sur le piège</translation>
    </message>
    <message>
        <source>It catches</source>
        <translation>Il capture</translation>
    </message>
    <message>
        <source>Kind of trap</source>
        <translation>Type de piège</translation>
    </message>
    <message>
        <source>One of a pair? Both counts are kept, never summed.</source>
        <translation>Un piège d’une paire&#xa0;? Les deux nombres sont conservés, jamais additionnés.</translation>
    </message>
    <message>
        <source>The trap is clean</source>
        <translation>Le piège est propre</translation>
    </message>
    <message>
        <source>Old catch, old lure and litter are out of it.</source>
        <translation>Anciennes captures, ancienne phéromone et débris en sont retirés.</translation>
    </message>
    <message>
        <source>Write on it, in pencil or paint</source>
        <translation>Écrivez dessus, au crayon ou à la peinture</translation>
    </message>
</context>
<context>
    <name>TrapSeason</name>
    <message>
        <source>Part of the flight only</source>
        <translation>Une partie du vol seulement</translation>
    </message>
    <message>
        <source>Show the season as</source>
        <translation>Montrer la saison par</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>Graphique</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visites</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semaines</translation>
    </message>
    <message>
        <source>No counts yet</source>
        <translation>Aucun relevé encore</translation>
    </message>
    <message>
        <source>Life of this trap</source>
        <translation>Vie de ce piège</translation>
    </message>
    <message>
        <source>Raised, lure and strip, moved, lent, ended</source>
        <translation>Rehaussé, phéromone et plaquette, déplacé, prêté, retiré</translation>
    </message>
    <message>
        <source>Count now</source>
        <translation>Faire le relevé</translation>
    </message>
    <message>
        <source>Take the trap down</source>
        <translation>Retirer le piège</translation>
    </message>
    <message>
        <source>Scout this field for larvae</source>
        <translation>Dépister les larves dans ce champ</translation>
    </message>
    <message>
        <source>What the rules say so far</source>
        <translation>Ce que disent les règles jusqu’ici</translation>
    </message>
    <message>
        <source>What counts in the crop</source>
        <translation>Ce qui compte dans la culture</translation>
    </message>
</context>
<context>
    <name>TrapSetup</name>
    <message>
        <source>Back to today</source>
        <translation>Retour à aujourd’hui</translation>
    </message>
    <message>
        <source>Yes, keep it so</source>
        <translation>Oui, conserver ainsi</translation>
    </message>
    <message>
        <source>Look at it again</source>
        <translation>Vérifier de nouveau</translation>
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
        <extracomment>&quot;259 moths&quot;, of a season that is over, respectively that goes on</extracomment>
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
        <translation>Saisir des relevés</translation>
    </message>
    <message>
        <source>%1 · typed by %2</source>
        <translation>%1 · saisi par %2</translation>
    </message>
    <message>
        <source>Day of the visits</source>
        <translation>Jour des visites</translation>
    </message>
    <message>
        <source>How they were reported</source>
        <translation>Moyen de transmission</translation>
    </message>
    <message>
        <source>Were the traps emptied?</source>
        <translation>Les pièges ont-ils été vidés&#xa0;?</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>nobody said</source>
        <translation>non dit</translation>
    </message>
    <message>
        <source>Enter keeps a count and goes to the next trap; arrows go up and down, Tab to who reported. Day and way stay as they are.</source>
        <translation>Entrée enregistre un nombre et passe au piège suivant&#xa0;; les flèches montent et descendent, Tab va à la personne qui a transmis. Le jour et le moyen restent.</translation>
    </message>
    <message>
        <source>Everybody has reported</source>
        <translation>Tout le monde a transmis</translation>
    </message>
    <message>
        <source>For this week no trap waits for a count.</source>
        <translation>Pour cette semaine, aucun piège n’attend de relevé.</translation>
    </message>
</context>
<context>
    <name>TypingEntry</name>
    <message>
        <source>Who reported for %1</source>
        <translation>Qui a transmis pour %1</translation>
    </message>
    <message>
        <source>who reported</source>
        <translation>transmis par</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>moths, a trap</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>It was counted</source>
        <translation>Il y a un nombre</translation>
    </message>
    <message>
        <source>No count</source>
        <translation>Pas de nombre</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>no count, a trap</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Why there is no count</source>
        <translation>Pourquoi il n’y a pas de nombre</translation>
    </message>
</context>
<context>
    <name>ValueWords</name>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 universal time</source>
        <translation>%1 temps universel</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 heures</translation>
    </message>
    <message>
        <source>another record</source>
        <translation>un autre enregistrement</translation>
    </message>
    <message>
        <source>a photograph</source>
        <translation>une photo</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
</context>
<context>
    <name>VisitCount</name>
    <message>
        <source>%1 counted</source>
        <translation>nombre compté&#xa0;: %1</translation>
    </message>
    <message>
        <source>tap anywhere here, or a key</source>
        <translation>touchez n’importe où ici, ou une touche</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>None caught</source>
        <translation>Aucune capture</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guide</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>Other: could not count, a heavy catch, start over</source>
        <translation>Autre&#xa0;: relevé impossible, grosse capture, recommencer</translation>
    </message>
    <message>
        <source>Tip the catch into a tray, standing upwind. Gloves off before you touch the phone.</source>
        <translation>Versez la capture dans un plateau, en vous tenant du côté d’où vient le vent. Retirez les gants avant de toucher le téléphone.</translation>
    </message>
    <message>
        <source>Next: look at the trap</source>
        <translation>Ensuite&#xa0;: regarder le piège</translation>
    </message>
    <message>
        <source>Next: look it over</source>
        <translation>Ensuite&#xa0;: vérifier</translation>
    </message>
    <message>
        <source>Zero is a count: the trap worked, and the pest was not in it. It is not the same as a trap that could not be counted.</source>
        <translation>Zéro est un relevé&#xa0;: le piège fonctionnait et le ravageur n’y était pas. Ce n’est pas la même chose qu’un piège dont le relevé était impossible.</translation>
    </message>
    <message>
        <source>Yes, none: keep it as zero</source>
        <translation>Oui, aucune&#xa0;: conserver zéro</translation>
    </message>
    <message>
        <source>It could not be counted</source>
        <translation>Relevé impossible</translation>
    </message>
    <message>
        <source>Go on counting</source>
        <translation>Continuer à compter</translation>
    </message>
    <message>
        <source>Guide: the marks to look for</source>
        <translation>Guide&#xa0;: les marques à chercher</translation>
    </message>
</context>
<context>
    <name>VisitDone</name>
    <message>
        <source>It is right</source>
        <translation>C’est juste</translation>
    </message>
    <message>
        <source>Number on the bag</source>
        <translation>Numéro du sachet</translation>
    </message>
    <message>
        <source>Day of the visit</source>
        <translation>Jour de la visite</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Keep the correction</source>
        <translation>Conserver la correction</translation>
    </message>
    <message>
        <source>Keep this visit</source>
        <translation>Conserver cette visite</translation>
    </message>
    <message>
        <source>Is it right?</source>
        <translation>Est-ce juste&#xa0;?</translation>
    </message>
    <message>
        <source>It is right: keep it</source>
        <translation>C’est juste&#xa0;: conserver</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Réexaminer</translation>
    </message>
    <message>
        <source>Bag those nobody is sure of, write this number on the bag in pencil, and freeze it.</source>
        <translation>Mettez en sachet ceux dont personne n’est sûr, écrivez ce numéro au crayon sur le sachet et congelez-le.</translation>
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
        <translation>Piège</translation>
    </message>
    <message>
        <source>Lure</source>
        <translation>Phéromone</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>VisitKept</name>
    <message>
        <source>See the season of this trap</source>
        <translation>Voir la saison de ce piège</translation>
    </message>
    <message>
        <source>See its samples</source>
        <translation>Voir ses échantillons</translation>
    </message>
    <message>
        <source>Something is wrong: correct it</source>
        <translation>Une erreur&#xa0;: corriger</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>VisitLure</name>
    <message>
        <source>Are lure and strip there, and no moth alive?</source>
        <translation>Phéromone et plaquette en place, aucun papillon vivant&#xa0;?</translation>
    </message>
    <message>
        <source>Is the lure there?</source>
        <translation>La phéromone est-elle en place&#xa0;?</translation>
    </message>
    <message>
        <source>No, or I changed something</source>
        <translation>Non, ou j’ai changé quelque chose</translation>
    </message>
    <message>
        <source>Sprayed since the last visit?</source>
        <translation>Traitement depuis la dernière visite&#xa0;?</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>The trap opened: the lure in its basket under the lid, the killing strip on the floor of the bucket</source>
        <translation>Le piège ouvert&#xa0;: la phéromone dans son panier sous le couvercle, la plaquette insecticide au fond du seau</translation>
    </message>
    <message>
        <source>Next: look it over</source>
        <translation>Ensuite&#xa0;: vérifier</translation>
    </message>
    <message>
        <source>Yes: lure and strip there</source>
        <translation>Oui&#xa0;: phéromone et plaquette en place</translation>
    </message>
    <message>
        <source>Yes: the lure is there</source>
        <translation>Oui&#xa0;: la phéromone est en place</translation>
    </message>
    <message>
        <source>I emptied the trap</source>
        <translation>J’ai vidé le piège</translation>
    </message>
    <message>
        <source>The trap; its lure hangs inside</source>
        <translation>Le piège&#xa0;; sa phéromone pend à l’intérieur</translation>
    </message>
</context>
<context>
    <name>VisitOtherSheet</name>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>A heavy catch: count a part of it</source>
        <translation>Grosse capture&#xa0;: en compter une partie</translation>
    </message>
    <message>
        <source>It could not be counted</source>
        <translation>Relevé impossible</translation>
    </message>
    <message>
        <source>Start over: back to what is kept</source>
        <translation>Recommencer&#xa0;: revenir à ce qui est enregistré</translation>
    </message>
    <message>
        <source>Start this visit over</source>
        <translation>Recommencer cette visite</translation>
    </message>
    <message>
        <source>Go back to counting</source>
        <translation>Revenir au relevé</translation>
    </message>
</context>
<context>
    <name>VisitPhoto</name>
    <message>
        <source>The photograph of this visit</source>
        <translation>La photo de cette visite</translation>
    </message>
    <message>
        <source>Choose another photograph</source>
        <translation>Choisir une autre photo</translation>
    </message>
    <message>
        <source>Add a photograph</source>
        <translation>Ajouter une photo</translation>
    </message>
    <message>
        <source>Leave the photograph out</source>
        <translation>Enlever la photo</translation>
    </message>
    <message>
        <source>A photograph of this visit</source>
        <translation>Une photo de cette visite</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp)</source>
        <translation>Images (*.jpg *.jpeg *.png *.webp)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>VisitTrap</name>
    <message>
        <source>Flowering is over: the crop grows no taller, so heights are not asked any more.</source>
        <translation>La floraison est finie&#xa0;: la culture ne grandit plus, les hauteurs ne sont donc plus demandées.</translation>
    </message>
    <message>
        <source>Canopy now</source>
        <translation>Couvert maintenant</translation>
    </message>
    <message>
        <source>It was %1. Change it, or say that it still is.</source>
        <translation>C’était %1. Changez la hauteur, ou dites qu’elle est la même.</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Entrance of the trap</source>
        <translation>Entrée du piège</translation>
    </message>
    <message>
        <source>Flowering is over</source>
        <translation>La floraison est finie</translation>
    </message>
    <message>
        <source>Then heights are not asked any more.</source>
        <translation>Les hauteurs ne sont alors plus demandées.</translation>
    </message>
    <message>
        <source>How was the trap?</source>
        <translation>Comment était le piège&#xa0;?</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Next: lure and strip</source>
        <translation>Ensuite&#xa0;: phéromone et plaquette</translation>
    </message>
</context>
<context>
    <name>VisitWords</name>
    <message>
        <source>%1 to the north</source>
        <translation>%1 au nord</translation>
    </message>
    <message>
        <source>%1 to the north-east</source>
        <translation>%1 au nord-est</translation>
    </message>
    <message>
        <source>%1 to the east</source>
        <translation>%1 à l’est</translation>
    </message>
    <message>
        <source>%1 to the south-east</source>
        <translation>%1 au sud-est</translation>
    </message>
    <message>
        <source>%1 to the south</source>
        <translation>%1 au sud</translation>
    </message>
    <message>
        <source>%1 to the south-west</source>
        <translation>%1 au sud-ouest</translation>
    </message>
    <message>
        <source>%1 to the west</source>
        <translation>%1 à l’ouest</translation>
    </message>
    <message>
        <source>%1 to the north-west</source>
        <translation>%1 au nord-ouest</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutes</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 heures</translation>
    </message>
    <message>
        <source>%1 away</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>set up today</source>
        <translation>installé aujourd’hui</translation>
    </message>
    <message>
        <source>already emptied today</source>
        <translation>déjà vidé aujourd’hui</translation>
    </message>
    <message>
        <source>set up %1 ago</source>
        <translation>installé il y a %1</translation>
    </message>
    <message>
        <source>last emptied %1 ago</source>
        <translation>vidé il y a %1</translation>
    </message>
    <message>
        <source>One count over %1: the total stands.</source>
        <translation>Un seul relevé en %1&#xa0;: le total reste valable.</translation>
    </message>
    <message>
        <source>flight likely over</source>
        <translation>vol probablement fini</translation>
    </message>
    <message>
        <source>flight not over yet</source>
        <translation>vol pas encore fini</translation>
    </message>
    <message>
        <source>This day lies %1 ahead. Is it the day of the visit?</source>
        <translation>Ce jour est dans %1. Est-ce bien le jour de la visite&#xa0;?</translation>
    </message>
    <message>
        <source>This day lies %1 before the trap was set up. Is it the day of the visit?</source>
        <translation>Ce jour est %1 avant l’installation du piège. Est-ce bien le jour de la visite&#xa0;?</translation>
    </message>
    <message>
        <source>This day lies %1 after the trap was taken down. Is it the day of the visit?</source>
        <translation>Ce jour est %1 après le retrait du piège. Est-ce bien le jour de la visite&#xa0;?</translation>
    </message>
    <message>
        <source>The trap was last emptied %1 ago by the records. Did nobody empty it since?</source>
        <translation>D’après les enregistrements, le piège a été vidé il y a %1. Personne ne l’a vidé depuis&#xa0;?</translation>
    </message>
    <message>
        <source>%1 is far above the largest other catch of this trap, %2. Is it right?</source>
        <translation>%1, c’est bien plus que la plus forte autre capture de ce piège, %2. Est-ce juste&#xa0;?</translation>
    </message>
    <message>
        <source>about %1, likely %2</source>
        <translation>environ %1, probablement %2</translation>
    </message>
    <message>
        <source>The whole catch was counted: this is no estimate.</source>
        <translation>Toute la capture a été comptée&#xa0;: ce n’est pas une estimation.</translation>
    </message>
    <message>
        <source>The range comes from how much the parts differ.</source>
        <translation>La fourchette vient de l’écart entre les parties.</translation>
    </message>
    <message>
        <source>The re-entry time of the label is over.</source>
        <translation>Le délai de réentrée de l’étiquette est passé.</translation>
    </message>
    <message>
        <source>Stay out until the end of %1: the day of spraying and the label&apos;s %2 h.</source>
        <translation>N’entrez pas avant la fin du %1&#xa0;: le jour du traitement et les %2 h de l’étiquette.</translation>
    </message>
    <message>
        <source>Stay out until %1, %2: the day of spraying and the label&apos;s %3 h.</source>
        <translation>N’entrez pas avant le %1, %2&#xa0;: le jour du traitement et les %3 h de l’étiquette.</translation>
    </message>
    <message>
        <source>Another visit to this trap lies only %1 away, and it emptied the trap. Are these other %2?</source>
        <translation>Une autre visite à ce piège est à seulement %1 d’écart, et le piège y a été vidé. S’agit-il d’autres %2&#xa0;?</translation>
    </message>
    <message>
        <source>Another visit to this trap lies only %1 away, and it did not empty the trap. Does this count hold those %2 as well?</source>
        <translation>Une autre visite à ce piège est à seulement %1 d’écart, et le piège n’y a pas été vidé. Ce nombre comprend-il aussi ces %2&#xa0;?</translation>
    </message>
    <message>
        <source>%1 in one trap is very many. Is it right?</source>
        <translation>%1 dans un seul piège, c’est beaucoup. Est-ce juste&#xa0;?</translation>
    </message>
    <message>
        <source>The range assumes that %1 clump twice as much as perfect mixing would leave them. Three parts or more show how much they really do.</source>
        <translation>La fourchette suppose que les %1 se groupent deux fois plus qu’après un mélange parfait. Trois parties ou plus montrent ce qu’il en est vraiment.</translation>
    </message>
</context>
<context>
    <name>Walk</name>
    <message>
        <source>no frame yet</source>
        <translation>pas encore de cadre</translation>
    </message>
    <message>
        <source>too few frames for a range</source>
        <translation>trop peu de cadres pour une fourchette</translation>
    </message>
    <message>
        <source>probably below %1 per m²</source>
        <translation>probablement moins de %1 par m²</translation>
    </message>
    <message>
        <source>too few frames: %1 to %2</source>
        <translation>trop peu de cadres&#xa0;: %1 à %2</translation>
    </message>
    <message>
        <source>likely %1 to %2</source>
        <translation>probablement %1 à %2</translation>
    </message>
    <message>
        <source>Look again in a few days.</source>
        <translation>Réexaminez dans quelques jours.</translation>
    </message>
    <message>
        <source>At least %1.</source>
        <translation>Au moins %1.</translation>
    </message>
    <message>
        <source>About one more frame.</source>
        <translation>Encore un cadre environ.</translation>
    </message>
    <message>
        <source>About %1 more frames.</source>
        <translation>Encore %1 cadres environ.</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>aucune trouvée</translation>
    </message>
    <message>
        <source>%1 per m²</source>
        <translation>%1 par m²</translation>
    </message>
    <message>
        <source>%1 · your threshold %2</source>
        <translation>%1 · votre seuil %2</translation>
    </message>
    <message>
        <source>Say what control costs, and the lines say when to stop.</source>
        <translation>Indiquez ce que coûte le traitement, et les lignes diront quand arrêter.</translation>
    </message>
    <message>
        <source>No stop rule can be drawn for this threshold.</source>
        <translation>Aucune règle d’arrêt ne peut être tracée pour ce seuil.</translation>
    </message>
    <message>
        <source>Below your threshold: you may stop.</source>
        <translation>En dessous de votre seuil&#xa0;: vous pouvez arrêter.</translation>
    </message>
    <message>
        <source>Above your threshold: you may stop.</source>
        <translation>Au-dessus de votre seuil&#xa0;: vous pouvez arrêter.</translation>
    </message>
    <message>
        <source>Too close to call. %1</source>
        <translation>Trop proche pour trancher. %1</translation>
    </message>
    <message>
        <source>about %1 paces</source>
        <translation>environ %1 pas</translation>
    </message>
</context>
<context>
    <name>WalkHow</name>
    <message>
        <source>How to look</source>
        <translation>Comment chercher</translation>
    </message>
    <message>
        <source>Count what lives and feeds by its size; the sick, apart. Take the next frame wherever the steps end, not where it looks bad.</source>
        <translation>Comptez par taille ce qui vit et se nourrit&#xa0;; les malades, à part. Placez le cadre suivant là où vos pas finissent, non là où les dégâts se voient.</translation>
    </message>
    <message>
        <source>To the first frame</source>
        <translation>Vers le premier cadre</translation>
    </message>
    <message>
        <source>Where, when and how</source>
        <translation>Où, quand et comment</translation>
    </message>
</context>
<context>
    <name>WalkSheet</name>
    <message>
        <source>Folder for the PDF</source>
        <translation>Dossier pour le PDF</translation>
    </message>
    <message>
        <source>One page, called %1.</source>
        <translation>Une page, appelée %1.</translation>
    </message>
    <message>
        <source>As text</source>
        <translation>En texte</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copié</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Copier le texte</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>Courriel</translation>
    </message>
    <message>
        <source>Message</source>
        <translation>Message</translation>
    </message>
    <message>
        <source>Nothing on this device takes it. Copy the text instead, and paste it where you write.</source>
        <translation>Rien sur cet appareil n’accepte l’envoi. Copiez plutôt le texte et collez-le là où vous écrivez.</translation>
    </message>
    <message>
        <source>Write the PDF</source>
        <translation>Écrire le PDF</translation>
    </message>
    <message>
        <source>%1 ÷ %2 ÷ %3 m² a frame = %4 larvae/m²</source>
        <translation>%1 ÷ %2 ÷ %3 m² par cadre = %4 larves/m²</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densité</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>À la main</translation>
    </message>
    <message>
        <source>After %1 stops: below at %2 larvae in all or fewer, above at %3 or more. Not before %4 stops; still between after %5, it stays open.</source>
        <extracomment>lists of the same length: stops, larvae, larvae; then the fewest and the most stops</extracomment>
        <translation>Après %1 arrêts&#xa0;: en dessous à %2 larves en tout ou moins, au-dessus à %3 ou plus. Pas avant %4 arrêts&#xa0;; encore entre les deux après %5, le champ reste indécis.</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>Quand arrêter</translation>
    </message>
    <message>
        <source>Without a threshold there is no line to stop at.</source>
        <translation>Sans seuil, il n’y a pas de ligne où arrêter.</translation>
    </message>
    <message>
        <source>No stop rule can be drawn for this threshold.</source>
        <translation>Aucune règle d’arrêt ne peut être tracée pour ce seuil.</translation>
    </message>
    <message>
        <source>Economic threshold, step by step</source>
        <translation>Seuil économique, étape par étape</translation>
    </message>
    <message>
        <source>Not worked out: cost and price have not been said.</source>
        <translation>Non calculé&#xa0;: le coût et le prix n’ont pas été indiqués.</translation>
    </message>
    <message>
        <source>Cost and price are those of the walk before: nothing was kept for this one.</source>
        <translation>Le coût et le prix sont ceux de la tournée de dépistage précédente&#xa0;: rien n’a été enregistré pour celle-ci.</translation>
    </message>
    <message>
        <source>Timing on %1: %2</source>
        <extracomment>&quot;Timing on 14 Jul: too early&quot;</extracomment>
        <translation>Moment, au %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation>Ce qui changerait la décision</translation>
    </message>
    <message>
        <source>What was decided</source>
        <translation>Ce qui a été décidé</translation>
    </message>
    <message>
        <source>Nothing was decided yet.</source>
        <translation>Rien n’a encore été décidé.</translation>
    </message>
    <message>
        <source>%1; decided on %2</source>
        <extracomment>what was decided, and the day</extracomment>
        <translation>%1&#xa0;; décidé le %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>A good day to look again: %1.</source>
        <translation>Un bon jour pour réexaminer&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>Worked out for %1 by protocol %2, version %3.</source>
        <translation>Calculé pour %1 selon le protocole %2, version %3.</translation>
    </message>
    <message>
        <source>The walk began under version %1.</source>
        <translation>La tournée de dépistage a commencé sous la version %1.</translation>
    </message>
    <message>
        <source>Scouting walk</source>
        <translation>Tournée de dépistage</translation>
    </message>
    <message>
        <source>Invented: made up for showing</source>
        <translation>Inventé&#xa0;: pour la démonstration</translation>
    </message>
    <message>
        <source>A field without a name</source>
        <translation>Un champ sans nom</translation>
    </message>
    <message>
        <source>Say what control costs and what the harvest brings.</source>
        <translation>Indiquez ce que coûte le traitement et ce que rapporte la récolte.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a name and its value</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>pods damaged, of those looked at</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>%1: over %2 mm</source>
        <extracomment>a size class and its edges: &quot;Small: under 13 mm&quot;</extracomment>
        <translation>%1&#xa0;: plus de %2 mm</translation>
    </message>
    <message>
        <source>%1: under %2 mm</source>
        <translation>%1&#xa0;: moins de %2 mm</translation>
    </message>
    <message>
        <source>%1: %2 to %3 mm</source>
        <translation>%1&#xa0;: %2 à %3 mm</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non dit</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>a crop stage and the scale it is told on</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>%1 m² (%2 × %2 cm)</source>
        <translation>%1 m² (%2 × %2 cm)</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Cadres</translation>
    </message>
    <message>
        <source>No frame was searched.</source>
        <translation>Aucun cadre n’a été fouillé.</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Cadre</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêt</translation>
    </message>
    <message>
        <source>Larvae</source>
        <extracomment>heads of columns: larvae of all sizes, sick ones, pods damaged</extracomment>
        <translation>Larves</translation>
    </message>
    <message>
        <source>Sick</source>
        <translation>Malades</translation>
    </message>
    <message>
        <source>Pods</source>
        <translation>Siliques</translation>
    </message>
    <message>
        <source>Larvae: alive and feeding, all sizes. Sick: parasitised or diseased, not among them. Pods: damaged, of those looked at. A dash: not looked at.</source>
        <translation>Larves&#xa0;: vivantes et se nourrissant, toutes tailles. Malades&#xa0;: parasitées ou atteintes d’une maladie, non comprises. Siliques&#xa0;: endommagées, sur celles examinées. Un tiret&#xa0;: non examiné.</translation>
    </message>
    <message>
        <source>Frame %1: %2</source>
        <translation>Cadre %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Where the frames were</source>
        <translation>Où étaient les cadres</translation>
    </message>
    <message>
        <source>No frame knows its place, so there is no sketch.</source>
        <translation>Aucun cadre ne connaît son emplacement&#xa0;: il n’y a donc pas de croquis.</translation>
    </message>
    <message>
        <source>Not on the sketch, for they do not know their place: frame %1.</source>
        <translation>Absents du croquis, faute d’emplacement connu&#xa0;: cadre %1.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Walked by</source>
        <translation>Parcourue par</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Pest</source>
        <translation>Ravageur</translation>
    </message>
    <message>
        <source>Crop stage</source>
        <translation>Stade de la culture</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>very dry, noted on the walk</source>
        <translation>très sèche, notée pendant la tournée de dépistage</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
</context>
<context>
    <name>WalkStart</name>
    <message>
        <source>Scout a field</source>
        <translation>Dépister un champ</translation>
    </message>
    <message>
        <source>Find a field</source>
        <translation>Trouver un champ</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Champ</translation>
    </message>
    <message>
        <source>Name of the field</source>
        <translation>Nom du champ</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>La continuer</translation>
    </message>
    <message>
        <source>Crop stage, by the %1</source>
        <translation>Stade de la culture (%1)</translation>
    </message>
    <message>
        <source>Begin: the first frame</source>
        <translation>Commencer&#xa0;: le premier cadre</translation>
    </message>
    <message>
        <source>Begin without a crop stage</source>
        <translation>Commencer sans stade de la culture</translation>
    </message>
    <message>
        <source>A very dry season</source>
        <translation>Saison très sèche</translation>
    </message>
    <message>
        <source>A note. Whether it lowers your threshold is asked when you decide.</source>
        <translation>Une note. À la décision, on vous demandera si elle abaisse votre seuil.</translation>
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
        <translation>Quel piège est-ce&#xa0;?</translation>
    </message>
    <message>
        <source>Count a trap</source>
        <translation>Relevé d’un piège</translation>
    </message>
    <message>
        <source>Your position is known %1. Nearest first.</source>
        <translation>Votre position&#xa0;: %1. Les plus proches d’abord.</translation>
    </message>
    <message>
        <source>There is no position yet: choose by name.</source>
        <translation>Pas encore de position&#xa0;: choisissez par nom.</translation>
    </message>
    <message>
        <source>These traps stand too close together for the position to tell them apart. Look at the tag on the trap.</source>
        <translation>Ces pièges sont trop rapprochés pour que la position suffise. Regardez l’étiquette sur le piège.</translation>
    </message>
    <message>
        <source>No trap is out</source>
        <translation>Aucun piège en place</translation>
    </message>
    <message>
        <source>Set up a trap first; then it can be counted here.</source>
        <translation>Installez d’abord un piège&#xa0;; son relevé pourra se faire ici.</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
</context>
<context>
    <name>Winter</name>
    <message>
        <source>Winter</source>
        <translation>Hiver</translation>
    </message>
    <message>
        <source>1 trap</source>
        <translation>1 piège</translation>
    </message>
    <message>
        <source>%1 traps</source>
        <translation>%1 pièges</translation>
    </message>
    <message>
        <source>1 visit</source>
        <translation>1 visite</translation>
    </message>
    <message>
        <source>%1 visits</source>
        <translation>%1 visites</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>one lasts %1, a season %2</source>
        <translation>une dure %1, une saison %2</translation>
    </message>
    <message>
        <source>Traps: %1</source>
        <translation>Pièges&#xa0;: %1</translation>
    </message>
    <message>
        <source>Lures: %1 (%2 in a trap; %3)</source>
        <translation>Phéromones&#xa0;: %1 (%2 par piège&#xa0;; %3)</translation>
    </message>
    <message>
        <source>Lures: not worked out. The protocol does not say how long one lasts.</source>
        <translation>Phéromones&#xa0;: non calculé. Le protocole ne dit pas combien de temps une phéromone dure.</translation>
    </message>
    <message>
        <source>Killing strips: %1 (%2)</source>
        <translation>Plaquettes insecticides&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>Killing strips: not worked out. The protocol does not say how long one lasts.</source>
        <translation>Plaquettes insecticides&#xa0;: non calculé. Le protocole ne dit pas combien de temps une plaquette dure.</translation>
    </message>
    <message>
        <source>Lost or replaced this season: %1. Those have to be bought again.</source>
        <translation>Perdus ou remplacés cette saison&#xa0;: %1. Ils sont à racheter.</translation>
    </message>
    <message>
        <source>%1 go on, %2 do not, %3 have not said.</source>
        <translation>%1 continuent, %2 non, %3 n’ont rien dit.</translation>
    </message>
    <message>
        <source>Without a keeper here: %1.</source>
        <extracomment>&quot;1 trap&quot; or &quot;3 traps&quot;</extracomment>
        <translation>Sans responsable ici&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>WinterHead</name>
    <message>
        <source>No traps yet</source>
        <translation>Aucun piège encore</translation>
    </message>
    <message>
        <source>When a season has been, this page says whom to thank and what to order.</source>
        <translation>Après une saison, cette page dit qui remercier et quoi commander.</translation>
    </message>
    <message>
        <source>What to order for %1</source>
        <translation>À commander pour %1</translation>
    </message>
    <message>
        <source>As many traps as this season, without those of people who do not go on. What you still have in store is not taken off. How long a lure or strip really lasts stands on its label, which goes before this list.</source>
        <translation>Autant de pièges que cette saison, sans ceux des personnes qui ne continuent pas. Ce que vous avez encore en réserve n’est pas déduit. La durée réelle d’une phéromone ou d’une plaquette figure sur son étiquette, qui prime sur cette liste.</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copié</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copier la liste</translation>
    </message>
    <message>
        <source>Thank-you sheets</source>
        <translation>Fiches de remerciement</translation>
    </message>
    <message>
        <source>Folder for the sheets</source>
        <translation>Dossier pour les fiches</translation>
    </message>
    <message>
        <source>A PDF for each who kept traps.</source>
        <translation>Un PDF pour chaque personne qui a suivi des pièges.</translation>
    </message>
    <message>
        <source>Write the sheets</source>
        <translation>Écrire les fiches</translation>
    </message>
    <message>
        <source>Who kept traps</source>
        <translation>Qui a suivi des pièges</translation>
    </message>
</context>
<context>
    <name>WithdrawSheet</name>
    <message>
        <source>Withdraw it?</source>
        <translation>Confirmer le retrait&#xa0;?</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>For example: typed at the wrong trap.</source>
        <translation>Par exemple&#xa0;: saisi au mauvais piège.</translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
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
</context>
<context>
    <name>YearExchange</name>
    <message>
        <source>With others</source>
        <translation>Avec d’autres</translation>
    </message>
    <message>
        <source>Exchange</source>
        <translation>Échange</translation>
    </message>
    <message>
        <source>By a folder, one file or a hub</source>
        <translation>Par un dossier, un fichier ou un serveur</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Différences</translation>
    </message>
    <message>
        <source>Two values for the same, proposals, and what was kept aside</source>
        <translation>Deux valeurs pour la même chose, propositions, et ce qui est mis de côté</translation>
    </message>
    <message>
        <source>Nothing waits for you</source>
        <translation>Rien ne vous attend</translation>
    </message>
    <message>
        <source>Members and devices</source>
        <translation>Membres et appareils</translation>
    </message>
    <message>
        <source>Who takes part, and inviting</source>
        <translation>Qui participe, et invitations</translation>
    </message>
    <message>
        <source>Join a programme by a code</source>
        <translation>Rejoindre un programme avec un code</translation>
    </message>
    <message>
        <source>What you kept alone can come along</source>
        <translation>Ce que vous avez enregistré seul peut suivre</translation>
    </message>
</context>
<context>
    <name>Years</name>
    <message>
        <source>Weeks and years</source>
        <translation>Semaines et années</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 at least</source>
        <translation>%1 «&#xa0;au moins&#xa0;»</translation>
    </message>
    <message>
        <source>%1 not counted</source>
        <translation>%1 sans relevé</translation>
    </message>
    <message>
        <source>Median trap</source>
        <translation>Piège médian</translation>
    </message>
    <message>
        <source>Middle half of the traps</source>
        <translation>Moitié centrale des pièges</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Highest trap</source>
        <translation>Plus forte capture</translation>
    </message>
    <message>
        <source>Nobody counted a night of this week here.</source>
        <translation>Aucune nuit de cette semaine n’a été relevée ici.</translation>
    </message>
    <message>
        <source>Counted in full</source>
        <translation>Relevés en entier</translation>
    </message>
    <message>
        <source>Highest: %1</source>
        <translation>Plus forte capture&#xa0;: %1</translation>
    </message>
    <message>
        <source>median %1 · %2</source>
        <translation>médiane %1 · %2</translation>
    </message>
    <message>
        <source>No district</source>
        <translation>Sans district</translation>
    </message>
    <message>
        <source>Cooperator not known</source>
        <translation>Collaborateur inconnu</translation>
    </message>
    <message>
        <source>All districts</source>
        <translation>Tous les districts</translation>
    </message>
    <message>
        <source>All traps</source>
        <translation>Tous les pièges</translation>
    </message>
    <message>
        <source>Bands of all years</source>
        <translation>Classes de toutes les années</translation>
    </message>
    <message>
        <source>%1, so far</source>
        <translation>%1, jusqu’ici</translation>
    </message>
    <message>
        <source>without a band</source>
        <translation>sans classe</translation>
    </message>
</context>
<context>
    <name>YearsHead</name>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est montré</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semaines</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Années</translation>
    </message>
    <message>
        <source>Outbreaks</source>
        <translation>Pullulations</translation>
    </message>
    <message>
        <source>Week before</source>
        <translation>Semaine précédente</translation>
    </message>
    <message>
        <source>Week after</source>
        <translation>Semaine suivante</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>district</source>
        <translation>district</translation>
    </message>
    <message>
        <source>cooperator</source>
        <translation>collaborateur</translation>
    </message>
    <message>
        <source>Each year up to the same date. Fields rotate, so districts and cooperators are compared, not fields.</source>
        <translation>Chaque année jusqu’à la même date. Les champs tournent&#xa0;: on compare donc les districts et les collaborateurs, non les champs.</translation>
    </message>
    <message>
        <source>Copied: paste it into a spreadsheet</source>
        <translation>Copié&#xa0;: collez dans un tableur</translation>
    </message>
    <message>
        <source>Copy this as a table</source>
        <translation>Copier sous forme de tableau</translation>
    </message>
    <message>
        <source>Each count is shared out over its nights. A bulletin takes only full counts of seven nights, made round: its medians may differ.</source>
        <translation>Chaque relevé est réparti sur ses nuits. Un bulletin ne retient que les relevés complets de sept nuits, arrondis : ses médianes peuvent différer.</translation>
    </message>
</context>
<context>
    <name>YesPage</name>
    <message>
        <source>Who said yes</source>
        <translation>Qui a dit oui</translation>
    </message>
    <message>
        <source>It is my own land</source>
        <translation>C’est ma propre terre</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Gate, dog, way in</source>
        <translation>Barrière, chien, accès</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Peut rester vide.</translation>
    </message>
    <message>
        <source>Without a yes the trap can be set up, but nobody can see later that the landowner agreed.</source>
        <translation>Sans accord, le piège peut être installé, mais personne ne pourra voir plus tard que le propriétaire a accepté.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::App</name>
    <message>
        <source>You take part in “%1” now, as %2: %3.</source>
        <comment>programme, name, role</comment>
        <translation>Vous participez maintenant à «&#xa0;%1&#xa0;», sous le nom de %2&#xa0;: %3.</translation>
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
        <translation>Examen du fichier</translation>
    </message>
    <message>
        <source>This file is of another programme than the one on this device. It is not taken in. To join that programme, choose the file under “Join by a code”.</source>
        <translation>Ce fichier vient d’un autre programme que celui de cet appareil. Il n’est pas intégré. Pour rejoindre ce programme, choisissez le fichier sous «&#xa0;Rejoindre avec un code&#xa0;».</translation>
    </message>
    <message>
        <source>The file stops before its end. What is whole can be taken in; ask for it again for the rest.</source>
        <translation>Le fichier s’arrête avant sa fin. Ce qui est entier peut être intégré&#xa0;; redemandez-le pour le reste.</translation>
    </message>
    <message>
        <source>One part of it would be refused and kept aside.</source>
        <translation>Une de ses parties serait refusée et mise de côté.</translation>
    </message>
    <message numerus="yes">
        <source>%n parts of it would be refused and kept aside.</source>
        <translation>
            <numerusform>%n de ses parties serait refusée et mise de côté.</numerusform>
            <numerusform>%n de ses parties seraient refusées et mises de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>Taking the file in</source>
        <translation>Intégration du fichier</translation>
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
        <translation>Indiquez ce que coûte le traitement et ce que rapporte la récolte.</translation>
    </message>
    <message>
        <source>Protocol %1, version %2</source>
        <translation>Protocole %1, version %2</translation>
    </message>
    <message>
        <source>You noted a very dry season on the walk. Your threshold is that of a usual one.</source>
        <translation>Vous avez noté une saison très sèche pendant la tournée de dépistage. Votre seuil est celui d’une saison habituelle.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::DeskViewModel</name>
    <message>
        <source>left out</source>
        <translation>écarté</translation>
    </message>
    <message>
        <source>%1 to look at</source>
        <translation>%1 à regarder</translation>
    </message>
    <message>
        <source>No trap that is known here</source>
        <translation>Piège inconnu ici</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>quelqu’un</translation>
    </message>
</context>
<context>
    <name>duskrow::app::ExchangeViewModel</name>
    <message>
        <source>No exchange yet</source>
        <translation>Aucun échange encore</translation>
    </message>
    <message>
        <source>Waiting for one entry from %1</source>
        <translation>%1&#xa0;: une saisie attendue</translation>
    </message>
    <message numerus="yes">
        <source>Waiting for %n entries from %1</source>
        <translation>
            <numerusform>%1&#xa0;: %n saisie attendue</numerusform>
            <numerusform>%1&#xa0;: %n saisies attendues</numerusform>
        </translation>
    </message>
    <message>
        <source>Two sets of entries from %1</source>
        <translation>%1&#xa0;: deux suites de saisies</translation>
    </message>
    <message>
        <source>It was copied or restored. Everything is kept; it goes on under a new number.</source>
        <translation>L’appareil a été copié ou restauré. Tout est conservé&#xa0;; il continue sous un nouveau numéro.</translation>
    </message>
    <message>
        <source>Choose a way: a folder that others can open too, a hub, or one file to hand on.</source>
        <translation>Choisissez un moyen&#xa0;: un dossier que d’autres peuvent ouvrir aussi, un serveur, ou un fichier à remettre.</translation>
    </message>
    <message>
        <source>What is only on this phone goes on its way with the next exchange.</source>
        <translation>Ce qui n’est que sur ce téléphone partira au prochain échange.</translation>
    </message>
    <message>
        <source>Everything entered here has left this phone at least once.</source>
        <translation>Tout ce qui a été saisi ici a quitté ce téléphone au moins une fois.</translation>
    </message>
    <message>
        <source>One thing was kept aside, with its reason</source>
        <translation>Un élément a été mis de côté, avec son motif</translation>
    </message>
    <message numerus="yes">
        <source>%n things were kept aside, each with its reason</source>
        <translation>
            <numerusform>%n élément a été mis de côté, avec son motif</numerusform>
            <numerusform>%n éléments ont été mis de côté, chacun avec son motif</numerusform>
        </translation>
    </message>
    <message>
        <source>Writing a file</source>
        <translation>Écriture d’un fichier</translation>
    </message>
    <message>
        <source>Stopped: the file is not whole, leave it.</source>
        <translation>Arrêté&#xa0;: le fichier n’est pas entier, laissez-le.</translation>
    </message>
    <message>
        <source>Written: %1. Whoever has it can read all of it.</source>
        <translation>Écrit&#xa0;: %1. Quiconque l’a peut tout y lire.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::FrameViewModel</name>
    <message>
        <source>Frame %1</source>
        <translation>Cadre %1</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non compté</translation>
    </message>
    <message>
        <source>stop %1</source>
        <translation>arrêt %1</translation>
    </message>
    <message>
        <source>%1 · frame %2</source>
        <extracomment>a field&apos;s name, then the number of the frame</extracomment>
        <translation>%1 · cadre %2</translation>
    </message>
    <message>
        <source>%1 m², searched to the ground</source>
        <translation>%1 m², fouillé jusqu’au sol</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Walk at least %1 between stops.</source>
        <translation>Marchez au moins %1 entre les arrêts.</translation>
    </message>
    <message>
        <source>%1 from the nearest stop: walk on to %2.</source>
        <translation>%1 depuis l’arrêt le plus proche&#xa0;: continuez jusqu’à %2.</translation>
    </message>
    <message>
        <source>%1 from the nearest stop</source>
        <translation>à %1 de l’arrêt le plus proche</translation>
    </message>
    <message>
        <source>Keep this frame</source>
        <translation>Conserver ce cadre</translation>
    </message>
    <message>
        <source>Keep this frame, walk on %1</source>
        <translation>Conserver ce cadre, avancer de %1</translation>
    </message>
    <message>
        <source>It is early: many larvae are up on the plants, feeding.</source>
        <translation>Il est tôt&#xa0;: beaucoup de larves sont sur les plantes et se nourrissent.</translation>
    </message>
    <message>
        <source>It is evening: many larvae are up on the plants, feeding.</source>
        <translation>C’est le soir&#xa0;: beaucoup de larves sont sur les plantes et se nourrissent.</translation>
    </message>
    <message>
        <source>It is day: look on the ground, under litter and clods and in cracks.</source>
        <translation>Il fait jour&#xa0;: cherchez au sol, sous les débris et les mottes et dans les fissures.</translation>
    </message>
    <message>
        <source>Larvae so far, by stop</source>
        <translation>Larves jusqu’ici, par arrêt</translation>
    </message>
    <message>
        <source>above</source>
        <comment>the threshold</comment>
        <translation>au-dessus</translation>
    </message>
    <message>
        <source>keep looking</source>
        <translation>continuer à chercher</translation>
    </message>
    <message>
        <source>below</source>
        <comment>the threshold</comment>
        <translation>en dessous</translation>
    </message>
    <message>
        <source>%1 · dry season</source>
        <extracomment>the frame, then a note of the walk</extracomment>
        <translation>%1 · saison sèche</translation>
    </message>
</context>
<context>
    <name>duskrow::app::HeavyCatchViewModel</name>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>ml</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>likely %1</source>
        <translation>probablement %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::HistoryViewModel</name>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <comment>day and time of a change</comment>
        <translation>d MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation>Visite du %1</translation>
    </message>
    <message>
        <source>Lent to %1</source>
        <translation>Prêté à %1</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>Échantillon %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>field and value</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <extracomment>field, value before, value after</extracomment>
        <translation>%1&#xa0;: %2 → %3</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source>Somebody not known here</source>
        <translation>Quelqu’un d’inconnu ici</translation>
    </message>
    <message>
        <source>kept it</source>
        <translation>a enregistré</translation>
    </message>
    <message>
        <source>corrected it</source>
        <translation>a corrigé</translation>
    </message>
    <message>
        <source>let it stand again</source>
        <translation>a maintenu de nouveau</translation>
    </message>
    <message>
        <source>withdrew it</source>
        <translation>a retiré</translation>
    </message>
    <message>
        <source>Its visits go out of every list and sum with it.</source>
        <translation>Ses visites sortent avec lui de toutes les listes et sommes.</translation>
    </message>
    <message>
        <source>Its traps keep standing on their own.</source>
        <translation>Ses pièges restent en place sans lui.</translation>
    </message>
    <message>
        <source>Its moths go out of the total. It stays listed, and you can let it stand again.</source>
        <translation>Ses papillons sortent du total. La visite reste dans la liste, et vous pouvez la maintenir de nouveau.</translation>
    </message>
    <message>
        <source>It stays in the history, and you can let it stand again.</source>
        <translation>Cela reste dans l’historique, et vous pouvez le maintenir de nouveau.</translation>
    </message>
    <message>
        <source>Walk of %1</source>
        <translation>Tournée de dépistage du %1</translation>
    </message>
    <message>
        <source>Decision of %1</source>
        <translation>Décision du %1</translation>
    </message>
    <message>
        <source>Its frames and its decision go out of every list with it.</source>
        <translation>Ses cadres et sa décision sortent avec elle de toutes les listes.</translation>
    </message>
    <message>
        <source>Its larvae go out of the estimate. It stays in the history.</source>
        <translation>Ses larves sortent de l’estimation. Le cadre reste dans l’historique.</translation>
    </message>
    <message>
        <source>It was withdrawn by somebody who had not seen a later entry, so it stands again.</source>
        <translation>Le retrait venait de quelqu’un qui n’avait pas vu une saisie plus récente&#xa0;; l’enregistrement est donc de nouveau maintenu.</translation>
    </message>
    <message>
        <source>Not counted. %1</source>
        <translation>Ne compte pas. %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::ImportViewModel</name>
    <message>
        <source>Nothing of it is new</source>
        <translation>Rien de nouveau</translation>
    </message>
    <message>
        <source>Bring in %1 records</source>
        <translation>Importer %1 enregistrements</translation>
    </message>
    <message>
        <source>Stopped after %1 records. The same file again brings in the rest; taking it back takes back these.</source>
        <translation>Arrêté après %1 enregistrements. Le même fichier importera le reste&#xa0;; l’annuler annulera ceux-ci.</translation>
    </message>
    <message>
        <source>%1 records were brought in.</source>
        <translation>%1 enregistrements ont été importés.</translation>
    </message>
    <message>
        <source>What would be taken back is being worked out.</source>
        <translation>Calcul de ce qui serait annulé.</translation>
    </message>
    <message>
        <source>Taken back: %1. Stays, because somebody changed or uses it: %2.</source>
        <translation>Annulé&#xa0;: %1. Reste, parce que quelqu’un l’a modifié ou s’en sert&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 records were taken back.</source>
        <translation>%1 enregistrements ont été annulés.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::InviteViewModel</name>
    <message>
        <source>first device</source>
        <comment>what the founding device is called</comment>
        <translation>premier appareil</translation>
    </message>
    <message>
        <source>There is no hub: give the shared folder or a carried file along with the code.</source>
        <translation>Il n’y a pas de serveur&#xa0;: remettez le dossier partagé ou un fichier transporté avec le code.</translation>
    </message>
    <message>
        <source>The hub is in the picture and in the text. Over the telephone, say its address too: %1</source>
        <translation>Le serveur figure dans l’image et dans le texte. Au téléphone, dites aussi son adresse&#xa0;: %1</translation>
    </message>
    <message>
        <source>Invitation as a QR picture</source>
        <translation>Invitation en image QR</translation>
    </message>
    <message>
        <source>The same as the code and the text below it.</source>
        <translation>La même chose que le code et le texte en dessous.</translation>
    </message>
    <message>
        <source>The hub knows the code: it can be used now.</source>
        <translation>Le serveur connaît le code&#xa0;: il peut servir dès maintenant.</translation>
    </message>
    <message>
        <source>The code lies in the shared folder: it can be used there now.</source>
        <translation>Le code est dans le dossier partagé&#xa0;: il peut y servir dès maintenant.</translation>
    </message>
    <message>
        <source>The code is on its way to where the other looks for it.</source>
        <translation>Le code est en route vers l’endroit où l’autre le cherchera.</translation>
    </message>
    <message>
        <source>Nobody can use the code yet: it is only on this phone, until an exchange has gone through.</source>
        <translation>Personne ne peut encore utiliser le code&#xa0;: il n’est que sur ce téléphone, jusqu’à ce qu’un échange aboutisse.</translation>
    </message>
    <message>
        <source>Join “%1” in Duskrow with the code %2, good once until %3. In the app choose “Join by a code” and paste this: %4</source>
        <translation>Rejoignez «&#xa0;%1&#xa0;» dans Duskrow avec le code %2, valable une fois jusqu’au %3. Dans l’application, choisissez «&#xa0;Rejoindre avec un code&#xa0;» et collez ceci&#xa0;: %4</translation>
    </message>
    <message>
        <source>Invitation</source>
        <translation>Invitation</translation>
    </message>
</context>
<context>
    <name>duskrow::app::JoinViewModel</name>
    <message>
        <source>1 field</source>
        <translation>1 champ</translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <translation>
            <numerusform>%n champ</numerusform>
            <numerusform>%n champs</numerusform>
        </translation>
    </message>
    <message>
        <source>1 trap</source>
        <translation>1 piège</translation>
    </message>
    <message numerus="yes">
        <source>%n traps</source>
        <translation>
            <numerusform>%n piège</numerusform>
            <numerusform>%n pièges</numerusform>
        </translation>
    </message>
    <message>
        <source>1 visit</source>
        <translation>1 visite</translation>
    </message>
    <message numerus="yes">
        <source>%n visits</source>
        <translation>
            <numerusform>%n visite</numerusform>
            <numerusform>%n visites</numerusform>
        </translation>
    </message>
    <message>
        <source>1 walk</source>
        <translation>1 tournée de dépistage</translation>
    </message>
    <message numerus="yes">
        <source>%n walks</source>
        <translation>
            <numerusform>%n tournée de dépistage</numerusform>
            <numerusform>%n tournées de dépistage</numerusform>
        </translation>
    </message>
    <message>
        <source>One record came along.</source>
        <translation>Un enregistrement a suivi.</translation>
    </message>
    <message numerus="yes">
        <source>%n records came along.</source>
        <translation>
            <numerusform>%n enregistrement a suivi.</numerusform>
            <numerusform>%n enregistrements ont suivi.</numerusform>
        </translation>
    </message>
    <message>
        <source>One photograph was not there any more.</source>
        <translation>Une photo n’y était plus.</translation>
    </message>
    <message numerus="yes">
        <source>%n photographs were not there any more.</source>
        <translation>
            <numerusform>%n photo n’y était plus.</numerusform>
            <numerusform>%n photos n’y étaient plus.</numerusform>
        </translation>
    </message>
    <message>
        <source>The season %1 is not begun here; its records lie ready for it.</source>
        <translation>La saison %1 n’est pas commencée ici&#xa0;; ses enregistrements sont prêts pour elle.</translation>
    </message>
    <message>
        <source>“%1” is not trapped in this programme; its records came along all the same.</source>
        <translation>Ce programme ne piège pas «&#xa0;%1&#xa0;»&#xa0;; les enregistrements ont suivi tout de même.</translation>
    </message>
    <message>
        <source>phone</source>
        <translation>téléphone</translation>
    </message>
    <message>
        <source>computer</source>
        <translation>ordinateur</translation>
    </message>
    <message>
        <source>Joining</source>
        <translation>Adhésion en cours</translation>
    </message>
</context>
<context>
    <name>duskrow::app::LarvaeViewModel</name>
    <message>
        <source>below the threshold</source>
        <translation>en dessous du seuil</translation>
    </message>
    <message>
        <source>above the threshold</source>
        <translation>au-dessus du seuil</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>trop proche pour trancher</translation>
    </message>
    <message>
        <source>%1 per m²</source>
        <translation>%1 par m²</translation>
    </message>
    <message>
        <source>Neighbouring fields differ: each field is scouted by itself. A trap catch never decides a spray.</source>
        <translation>Des champs voisins diffèrent&#xa0;: chaque champ est dépisté pour lui-même. Une capture ne décide jamais d’un traitement.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::LifeViewModel</name>
    <message>
        <source>Life of a trap</source>
        <translation>Vie d’un piège</translation>
    </message>
    <message>
        <source>Withdrawn: %1</source>
        <translation>Enregistrement retiré&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ended on %1: %2.</source>
        <translation>Retiré le %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Ended on %1.</source>
        <translation>Retiré le %1.</translation>
    </message>
    <message>
        <source>Lent to %1 until %2.</source>
        <translation>Prêté à %1 jusqu’au %2.</translation>
    </message>
    <message>
        <source>Put on fresh gloves afterwards.</source>
        <translation>Mettez ensuite des gants neufs.</translation>
    </message>
    <message>
        <source>entrance %1</source>
        <translation>entrée %1</translation>
    </message>
    <message>
        <source>canopy %1</source>
        <translation>couvert %1</translation>
    </message>
    <message>
        <source>canopy not measured</source>
        <translation>couvert non mesuré</translation>
    </message>
    <message>
        <source>Nobody has measured the canopy here.</source>
        <translation>Personne n’a mesuré le couvert ici.</translation>
    </message>
    <message>
        <source>Canopy last measured on %1.</source>
        <translation>Couvert mesuré pour la dernière fois le %1.</translation>
    </message>
    <message>
        <source>%1 The crop stands at or over the entrance: set it higher.</source>
        <translation>%1 La culture atteint l’entrée ou la dépasse&#xa0;: placez l’entrée plus haut.</translation>
    </message>
    <message>
        <source>%1 At its last pace it reaches this height about %2: an estimate.</source>
        <translation>%1 À son dernier rythme, la culture atteint cette hauteur vers le %2&#xa0;: une estimation.</translation>
    </message>
    <message>
        <source>Nobody noted where it stood before.</source>
        <translation>Personne n’a noté où il était avant.</translation>
    </message>
    <message>
        <source>%1 from where it stood</source>
        <translation>à %1 de son emplacement d’avant</translation>
    </message>
</context>
<context>
    <name>duskrow::app::MapViewModel</name>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>No trap stands yet.</source>
        <translation>Aucun piège en place encore.</translation>
    </message>
    <message>
        <source>traps alone</source>
        <comment>what a map shows</comment>
        <translation>pièges seuls</translation>
    </message>
    <message>
        <source>Nobody has published bands for this trap type: traps alone.</source>
        <translation>Personne n’a publié de classes pour ce type de piège&#xa0;: pièges seuls.</translation>
    </message>
    <message>
        <source>What lies between the traps is being worked out.</source>
        <translation>Calcul de ce qu’il y a entre les pièges.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::MemberViewModel</name>
    <message>
        <source>Device without a name</source>
        <translation>Appareil sans nom</translation>
    </message>
    <message>
        <source>this one</source>
        <translation>celui-ci</translation>
    </message>
    <message>
        <source>1 entry is here</source>
        <translation>1 saisie est ici</translation>
    </message>
    <message numerus="yes">
        <source>%n entries are here</source>
        <translation>
            <numerusform>%n saisie est ici</numerusform>
            <numerusform>%n saisies sont ici</numerusform>
        </translation>
    </message>
    <message>
        <source>the last of %1</source>
        <comment>day and time</comment>
        <translation>la dernière&#xa0;: %1</translation>
    </message>
    <message>
        <source>Main device of the programme</source>
        <translation>Appareil principal du programme</translation>
    </message>
    <message>
        <source>Entered by its code, not confirmed yet</source>
        <translation>Entré par son code, pas encore confirmé</translation>
    </message>
    <message>
        <source>Ended after entry %1</source>
        <translation>Retiré après la saisie %1</translation>
    </message>
    <message>
        <source>kept by %1</source>
        <translation>suivi par %1</translation>
    </message>
    <message>
        <source>works there too</source>
        <translation>y travaille aussi</translation>
    </message>
</context>
<context>
    <name>duskrow::app::MembersViewModel</name>
    <message>
        <source>this device</source>
        <translation>cet appareil</translation>
    </message>
    <message>
        <source>no device yet</source>
        <translation>aucun appareil encore</translation>
    </message>
    <message>
        <source>1 device</source>
        <translation>1 appareil</translation>
    </message>
    <message numerus="yes">
        <source>%n devices</source>
        <translation>
            <numerusform>%n appareil</numerusform>
            <numerusform>%n appareils</numerusform>
        </translation>
    </message>
    <message>
        <source>last entry %1</source>
        <comment>day and time</comment>
        <translation>dernière saisie&#xa0;: %1</translation>
    </message>
    <message>
        <source>1 field</source>
        <translation>1 champ</translation>
    </message>
    <message numerus="yes">
        <source>%n fields</source>
        <translation>
            <numerusform>%n champ</numerusform>
            <numerusform>%n champs</numerusform>
        </translation>
    </message>
    <message>
        <source>until %1</source>
        <comment>last day in the programme</comment>
        <translation>jusqu’au %1</translation>
    </message>
    <message>
        <source>the code was good until %1</source>
        <translation>le code était valable jusqu’au %1</translation>
    </message>
    <message>
        <source>the code is good until %1</source>
        <translation>le code est valable jusqu’au %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::NewsViewModel</name>
    <message>
        <source>Whole region</source>
        <translation>Toute la région</translation>
    </message>
    <message>
        <source>Published %1</source>
        <translation>Publié le %1</translation>
    </message>
    <message>
        <source>%1, issue %2, in place of the one before</source>
        <translation>%1, édition %2, à la place de la précédente</translation>
    </message>
</context>
<context>
    <name>duskrow::app::PestCalendarViewModel</name>
    <message>
        <source>Calendar of pest and crop</source>
        <translation>Calendrier du ravageur et de la culture</translation>
    </message>
    <message>
        <source>as on %1</source>
        <translation>au %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::PlaceViewModel</name>
    <message>
        <source>one fix</source>
        <translation>une position</translation>
    </message>
    <message>
        <source>%1 fixes averaged</source>
        <translation>moyenne de %1 positions</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>saisi</translation>
    </message>
    <message>
        <source>%1 fixes</source>
        <translation>%1 positions</translation>
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
    <name>duskrow::app::PublishViewModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Week %1 · %2</source>
        <extracomment>the number of a week and its days</extracomment>
        <translation>Semaine %1 · %2</translation>
    </message>
    <message>
        <source>Not published yet. Once it is, the week no longer moves with late counts.</source>
        <translation>Pas encore publié. Une fois publiée, la semaine ne bouge plus avec les relevés tardifs.</translation>
    </message>
    <message>
        <source>Published, issue %1. This is what everybody reads.</source>
        <translation>Publié, édition %1. C’est ce que tout le monde lit.</translation>
    </message>
    <message>
        <source>This would be issue %1. It replaces the one that is out.</source>
        <translation>Ce serait l’édition %1. Elle remplace celle qui est parue.</translation>
    </message>
    <message>
        <source>The counts of this week are not all due yet. Publish it when they are.</source>
        <translation>Certains relevés de cette semaine ne sont pas encore échus. Publiez-la quand ils le seront.</translation>
    </message>
    <message>
        <source>No new issue: too few farms have changed their counts, and it would show whose they are.</source>
        <translation>Pas de nouvelle édition&#xa0;: trop peu de fermes ont changé leurs relevés, et cela montrerait à qui ils sont.</translation>
    </message>
    <message>
        <source>Traps whose counts have changed since: %1.</source>
        <translation>Pièges dont les relevés ont changé depuis&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Cells of a tenth of a degree with five farms or more: %1</source>
        <translation>Mailles d’un dixième de degré avec au moins cinq fermes&#xa0;: %1</translation>
    </message>
    <message>
        <source>Written: %1 files, in %2.</source>
        <extracomment>the number of files, a folder</extracomment>
        <translation>Écrit&#xa0;: %1 fichiers, dans %2.</translation>
    </message>
    <message>
        <source>No trap stood out in this week. Choose another.</source>
        <translation>Aucun piège n’était en place cette semaine-là. Choisissez-en une autre.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::QuestionsViewModel</name>
    <message>
        <source>a coordinator</source>
        <translation>la coordination</translation>
    </message>
    <message>
        <source>Asked by %1, %2</source>
        <comment>a name, a day</comment>
        <translation>Demandé par %1, %2</translation>
    </message>
    <message>
        <source>Your answer is kept here; it goes along with the next exchange.</source>
        <translation>Votre réponse est enregistrée ici&#xa0;; elle partira au prochain échange.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::RoundBackBy</name>
    <message>
        <source>That time has gone by today.</source>
        <translation>Cette heure est déjà passée aujourd’hui.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::RoundFile</name>
    <message>
        <source>The stops are in %1.</source>
        <translation>Les arrêts sont dans %1.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::RoundViewModel</name>
    <message>
        <source>%1. %2</source>
        <extracomment>the place of a stop in the round, then its name</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nobody noted where it is.</source>
        <translation>Personne n’a noté où il se trouve.</translation>
    </message>
    <message>
        <source>The day&apos;s round</source>
        <translation>La tournée du jour</translation>
    </message>
    <message>
        <source>The round is done</source>
        <translation>La tournée est terminée</translation>
    </message>
    <message>
        <source>Your own order, kept for today.</source>
        <translation>Votre propre ordre, gardé pour aujourd’hui.</translation>
    </message>
    <message>
        <source>By name: there are too many stops to order.</source>
        <translation>Par nom&#xa0;: il y a trop d’arrêts à ordonner.</translation>
    </message>
    <message>
        <source>By name: without a position nobody knows which stop is near.</source>
        <translation>Par nom&#xa0;: sans position, personne ne sait quel arrêt est proche.</translation>
    </message>
    <message>
        <source>The shortest way found from here, infested fields last.</source>
        <translation>Le plus court chemin trouvé d’ici, champs infestés en dernier.</translation>
    </message>
    <message>
        <source>The shortest way found from here.</source>
        <translation>Le plus court chemin trouvé d’ici.</translation>
    </message>
    <message>
        <source>No field of this round is known to be infested.</source>
        <translation>Aucun champ de cette tournée n’est connu comme infesté.</translation>
    </message>
    <message>
        <source>One field of this round is infested.</source>
        <translation>Un champ de cette tournée est infesté.</translation>
    </message>
    <message>
        <source>%1 fields of this round are infested.</source>
        <translation>%1 champs de cette tournée sont infestés.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SampleList</name>
    <message>
        <source>%1 of %2 the pest</source>
        <translation>ravageur&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>without a number</source>
        <translation>sans numéro</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SamplesViewModel</name>
    <message>
        <source>to %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SeasonViewModel</name>
    <message>
        <source>Day not known</source>
        <translation>Jour inconnu</translation>
    </message>
    <message>
        <source>withdrawn: %1</source>
        <translation>retirée&#xa0;: %1</translation>
    </message>
    <message>
        <source>This one, %1</source>
        <translation>Celui-ci, %1</translation>
    </message>
    <message>
        <source>Season of a trap</source>
        <translation>Saison d’un piège</translation>
    </message>
    <message>
        <source>season %1</source>
        <translation>saison %1</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>ended %1</source>
        <translation>retiré le %1</translation>
    </message>
    <message numerus="yes">
        <source>Look for larvae about %n days after the peak.</source>
        <translation>
            <numerusform>Cherchez les larves environ %n jour après le pic.</numerusform>
            <numerusform>Cherchez les larves environ %n jours après le pic.</numerusform>
        </translation>
    </message>
    <message>
        <source>Highest catch about %1: look for larvae from about %2.</source>
        <translation>Plus forte capture vers le %1&#xa0;: cherchez les larves à partir du %2 environ.</translation>
    </message>
    <message>
        <source>No band: nobody has published bands for this type of trap.</source>
        <translation>Pas de classe&#xa0;: personne n’a publié de classes pour ce type de piège.</translation>
    </message>
    <message>
        <source>%1 or higher</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>By protocol version %1</source>
        <translation>Selon la version %1 du protocole</translation>
    </message>
    <message>
        <source>By protocol version %1; the trap was set up by version %2</source>
        <translation>Selon la version %1 du protocole&#xa0;; le piège a été installé selon la version %2</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupAround</name>
    <message>
        <source>Trap %1, %2</source>
        <translation>Piège %1, %2</translation>
    </message>
    <message>
        <source>Trap %1</source>
        <translation>Piège %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: %2 is too close.</source>
        <translation>%1&#xa0;: %2, c’est trop près.</translation>
    </message>
    <message>
        <source>%1: %2 is too far.</source>
        <translation>%1&#xa0;: %2, c’est trop loin.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupSite</name>
    <message>
        <source>no trap stands here</source>
        <translation>aucun piège en place ici</translation>
    </message>
    <message>
        <source>trap %1</source>
        <translation>piège %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>No field of this season is called that.</source>
        <translation>Aucun champ de cette saison ne porte ce nom.</translation>
    </message>
    <message>
        <source>and %1 more: type a part of the name</source>
        <translation>et %1 de plus&#xa0;: tapez une partie du nom</translation>
    </message>
    <message>
        <source>Choose the field, or enter a new one.</source>
        <translation>Choisissez le champ, ou saisissez-en un nouveau.</translation>
    </message>
    <message>
        <source>Who said yes? The way in is kept with the name.</source>
        <translation>Qui a dit oui&#xa0;? L’accès est conservé avec le nom.</translation>
    </message>
    <message>
        <source>This day lies ahead. A yes was said today or before.</source>
        <translation>Ce jour est à venir. Un oui a été dit aujourd’hui ou avant.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupStake</name>
    <message>
        <source>entrance %1</source>
        <translation>entrée %1</translation>
    </message>
    <message>
        <source>canopy %1</source>
        <translation>couvert %1</translation>
    </message>
    <message>
        <source>The trap on its stake over the crop</source>
        <translation>Le piège sur son piquet au-dessus de la culture</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>By the last heights here the crop reaches the entrance about %1. This is an estimate.</source>
        <translation>D’après les dernières hauteurs ici, la culture atteint l’entrée vers le %1. C’est une estimation.</translation>
    </message>
    <message>
        <source>When the crop will reach the entrance is not known yet: the height at the next visit tells how fast it grows.</source>
        <translation>On ne sait pas encore quand la culture atteindra l’entrée&#xa0;: la hauteur à la prochaine visite dira à quelle vitesse elle pousse.</translation>
    </message>
    <message>
        <source>The crop reaches the entrance already. Set the trap higher, so that its entrance is free.</source>
        <translation>La culture atteint déjà l’entrée. Placez le piège plus haut, pour que son entrée soit libre.</translation>
    </message>
    <message>
        <source>The crop hides the entrance. Set the trap higher, so that its entrance is free.</source>
        <translation>La culture cache l’entrée. Placez le piège plus haut, pour que son entrée soit libre.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupTrap</name>
    <message>
        <source>No, it stands alone</source>
        <translation>Non, il est seul</translation>
    </message>
    <message>
        <source>with trap %1</source>
        <translation>avec le piège %1</translation>
    </message>
    <message>
        <source>A trap %1 stands already at %2. Two traps of one tag are easily mixed up.</source>
        <translation>Il y a déjà un piège %1 en place (%2). Deux pièges de même étiquette se confondent facilement.</translation>
    </message>
    <message>
        <source>another field</source>
        <translation>un autre champ</translation>
    </message>
    <message>
        <source>%1
%2
trap %3</source>
        <translation>%1
%2
piège %3</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>This lure expired %1 ago. It may draw fewer: use a fresh one if you can.</source>
        <translation>Cette phéromone est périmée depuis %1. Elle attire peut-être moins&#xa0;: prenez-en une neuve si vous le pouvez.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SetupViewModel</name>
    <message>
        <source>The season of %1 has not begun yet. Begin it first, then set up its traps.</source>
        <translation>La saison %1 n’est pas encore commencée. Commencez-la d’abord, puis installez ses pièges.</translation>
    </message>
    <message>
        <source>This device does not know yet whose it is.</source>
        <translation>Cet appareil ne sait pas encore à qui il est.</translation>
    </message>
    <message>
        <source>The day of set-up lies ahead</source>
        <translation>Le jour d’installation est à venir</translation>
    </message>
    <message>
        <source>%1 has not come yet. Counts start from the day of set-up.</source>
        <translation>Le %1 n’est pas encore arrivé. Les relevés partent du jour d’installation.</translation>
    </message>
    <message>
        <source>Another year?</source>
        <translation>Une autre année&#xa0;?</translation>
    </message>
    <message>
        <source>Set up a trap</source>
        <translation>Installer un piège</translation>
    </message>
    <message>
        <source>%1 · trap %2</source>
        <translation>%1 · piège %2</translation>
    </message>
    <message>
        <source>Next: the landowner’s yes</source>
        <translation>Ensuite&#xa0;: l’accord du propriétaire</translation>
    </message>
    <message>
        <source>Next: the place</source>
        <translation>Ensuite&#xa0;: l’emplacement</translation>
    </message>
    <message>
        <source>Go on without the yes</source>
        <translation>Continuer sans l’accord</translation>
    </message>
    <message>
        <source>Next: what stands around</source>
        <translation>Ensuite&#xa0;: les environs</translation>
    </message>
    <message>
        <source>Use these coordinates</source>
        <translation>Utiliser ces coordonnées</translation>
    </message>
    <message>
        <source>Use this place</source>
        <translation>Utiliser cet emplacement</translation>
    </message>
    <message>
        <source>Go on without a place</source>
        <translation>Continuer sans emplacement</translation>
    </message>
    <message>
        <source>Next: the trap</source>
        <translation>Ensuite&#xa0;: le piège</translation>
    </message>
    <message>
        <source>Next: the lure</source>
        <translation>Ensuite&#xa0;: la phéromone</translation>
    </message>
    <message>
        <source>Next: the stake</source>
        <translation>Ensuite&#xa0;: le piquet</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>J’ai lu ceci</translation>
    </message>
    <message>
        <source>The lure is in its basket</source>
        <translation>La phéromone est dans son panier</translation>
    </message>
    <message>
        <source>Next: the killing strip</source>
        <translation>Ensuite&#xa0;: la plaquette insecticide</translation>
    </message>
    <message>
        <source>The strip is in</source>
        <translation>La plaquette est en place</translation>
    </message>
    <message>
        <source>Go on without the strip</source>
        <translation>Continuer sans la plaquette</translation>
    </message>
    <message>
        <source>Next: a last look</source>
        <translation>Ensuite&#xa0;: un dernier coup d’œil</translation>
    </message>
    <message>
        <source>Keep this trap</source>
        <translation>Conserver ce piège</translation>
    </message>
    <message>
        <source>See its season</source>
        <translation>Voir sa saison</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SheetViewModel</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>The sheet is in %1.</source>
        <translation>La fiche est dans %1.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::SizeTiles</name>
    <message>
        <source>over %1&#xa0;mm</source>
        <translation>plus de %1 mm</translation>
    </message>
    <message>
        <source>under %1&#xa0;mm</source>
        <translation>moins de %1 mm</translation>
    </message>
    <message>
        <source>%1 to %2&#xa0;mm</source>
        <translation>%1 à %2 mm</translation>
    </message>
</context>
<context>
    <name>duskrow::app::TemperaturesViewModel</name>
    <message>
        <source>Days in the file</source>
        <translation>Jours dans le fichier</translation>
    </message>
    <message>
        <source>%1, from %2 to %3</source>
        <translation>%1, du %2 au %3</translation>
    </message>
    <message>
        <source>Nothing for</source>
        <translation>Rien pendant</translation>
    </message>
    <message>
        <source>Degrees</source>
        <translation>Degrés</translation>
    </message>
    <message>
        <source>Celsius</source>
        <translation>Celsius</translation>
    </message>
    <message>
        <source>Fahrenheit</source>
        <translation>Fahrenheit</translation>
    </message>
    <message>
        <source>New days</source>
        <translation>Nouveaux jours</translation>
    </message>
    <message>
        <source>Days that are here already</source>
        <translation>Jours déjà ici</translation>
    </message>
    <message>
        <source>New station</source>
        <translation>Nouvelle station</translation>
    </message>
    <message>
        <source>Change the station</source>
        <translation>Changer la station</translation>
    </message>
    <message>
        <source>Nothing of it is new</source>
        <translation>Rien de nouveau</translation>
    </message>
    <message>
        <source>Bring in 1 day</source>
        <translation>Importer 1 jour</translation>
    </message>
    <message>
        <source>Bring in %1 days</source>
        <translation>Importer %1 jours</translation>
    </message>
    <message>
        <source>Stopped after %1 records. The same file again brings in the rest.</source>
        <translation>Arrêté après %1 enregistrements. Le même fichier importera le reste.</translation>
    </message>
    <message>
        <source>%1 records were brought in. They can be taken back where past years come in.</source>
        <translation>%1 enregistrements ont été importés. On peut les annuler là où s’importent les années passées.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::ThresholdGrid</name>
    <message>
        <source>the walk lies below</source>
        <translation>la tournée de dépistage est en dessous</translation>
    </message>
    <message>
        <source>the walk lies above</source>
        <translation>la tournée de dépistage est au-dessus</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>trop proche pour trancher</translation>
    </message>
    <message>
        <source>%1 %2 at %3 %4: %5 larvae per m²</source>
        <extracomment>cost, its unit, price, its unit, larvae</extracomment>
        <translation>%1 %2 à %3 %4&#xa0;: %5 larves par m²</translation>
    </message>
</context>
<context>
    <name>duskrow::app::TypingViewModel</name>
    <message>
        <source>This day is still to come.</source>
        <translation>Ce jour est encore à venir.</translation>
    </message>
    <message>
        <source>A count of this day is for the week %1. Go to that week to type it.</source>
        <translation>Un relevé de ce jour est pour la semaine %1. Allez à cette semaine pour le saisir.</translation>
    </message>
    <message>
        <source>Say who reported it.</source>
        <translation>Indiquez qui l’a transmis.</translation>
    </message>
    <message>
        <source>Kept: %1 on %2, %3, from %4</source>
        <extracomment>&quot;47 moths&quot;, a day, &quot;by phone&quot;, a person</extracomment>
        <translation>Enregistré&#xa0;: %1 le %2, %3, transmis par %4</translation>
    </message>
    <message>
        <source>Kept: could not count on %1, %2, from %3: %4</source>
        <extracomment>a day, &quot;by phone&quot;, a person, &quot;trap had fallen&quot;</extracomment>
        <translation>Enregistré&#xa0;: relevé impossible le %1, %2, transmis par %3&#xa0;: %4</translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitCountViewModel</name>
    <message>
        <source>bees in the bucket</source>
        <translation>abeilles dans le seau</translation>
    </message>
    <message>
        <source>a sample, numbered</source>
        <translation>un échantillon, numéroté</translation>
    </message>
    <message>
        <source>when the visit is kept</source>
        <translation>à l’enregistrement de la visite</translation>
    </message>
    <message>
        <source>so far %1 → %2</source>
        <translation>jusqu’ici %1 → %2</translation>
    </message>
    <message>
        <source>One more bee</source>
        <translation>Une abeille de plus</translation>
    </message>
    <message>
        <source>Estimated %1: likely %2.</source>
        <translation>Estimé %1&#xa0;: probablement %2.</translation>
    </message>
    <message>
        <source>None caught?</source>
        <translation>Aucune capture&#xa0;?</translation>
    </message>
    <message>
        <source>The %1. No number is kept for these nights, and the season is “at least”.</source>
        <translation>Motif&#xa0;: %1. Aucun nombre n’est conservé pour ces nuits, et la saison est «&#xa0;au moins&#xa0;».</translation>
    </message>
    <message>
        <source>No number is kept: %1. That is neither zero nor a missed week.</source>
        <translation>Aucun nombre n’est conservé&#xa0;: %1. Ce n’est ni un zéro ni une semaine manquée.</translation>
    </message>
    <message>
        <source>%1 of other kinds</source>
        <translation>%1 d’autres espèces</translation>
    </message>
    <message>
        <source>%1 nobody is sure of: bag them</source>
        <translation>%1 d’identité incertaine&#xa0;: en sachet</translation>
    </message>
    <message>
        <source>bees in the trap</source>
        <translation>abeilles dans le piège</translation>
    </message>
    <message>
        <source>no %1 counted yet</source>
        <translation>pas encore de %1 au compte</translation>
    </message>
    <message>
        <source>%1 in the bucket</source>
        <translation>%1 dans le seau</translation>
    </message>
    <message>
        <source>%1 in the trap</source>
        <translation>%1 dans le piège</translation>
    </message>
    <message>
        <source>One more %1 of another kind</source>
        <translation>1 %1 de plus, autre espèce</translation>
    </message>
    <message>
        <source>One more %1 nobody is sure of</source>
        <translation>1 %1 de plus, identité incertaine</translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation>1 %1 de plus</translation>
    </message>
    <message>
        <source>No %1 among them?</source>
        <translation>Pas de %1 dans le lot&#xa0;?</translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitDoneViewModel</name>
    <message>
        <source>Could not count</source>
        <translation>Relevé impossible</translation>
    </message>
    <message>
        <source>Nothing counted</source>
        <translation>Rien de compté</translation>
    </message>
    <message>
        <source>At least %1</source>
        <translation>Au moins %1</translation>
    </message>
    <message>
        <source>%1 over %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation>Estimé</translation>
    </message>
    <message>
        <source>Likely</source>
        <translation>Probable</translation>
    </message>
    <message>
        <source>Other kinds</source>
        <translation>Autres espèces</translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation>Incertain</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Abeilles</translation>
    </message>
    <message>
        <source>Longer than a week</source>
        <translation>Plus d’une semaine</translation>
    </message>
    <message>
        <source>Trap</source>
        <translation>Piège</translation>
    </message>
    <message>
        <source>Canopy</source>
        <translation>Couvert</translation>
    </message>
    <message>
        <source>Entrance set to</source>
        <translation>Entrée réglée à</translation>
    </message>
    <message>
        <source>Flowering</source>
        <translation>Floraison</translation>
    </message>
    <message>
        <source>over</source>
        <translation>finie</translation>
    </message>
    <message>
        <source>Lure</source>
        <translation>Phéromone</translation>
    </message>
    <message>
        <source>there</source>
        <translation>présente</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>absente</translation>
    </message>
    <message>
        <source>New lure</source>
        <translation>Nouvelle phéromone</translation>
    </message>
    <message>
        <source>put in</source>
        <translation>mise en place</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>Killing strip</source>
        <translation>Plaquette insecticide</translation>
    </message>
    <message>
        <source>New strip</source>
        <translation>Nouvelle plaquette</translation>
    </message>
    <message>
        <source>Moths alive</source>
        <translation>Papillons vivants</translation>
    </message>
    <message>
        <source>yes: the strip is spent</source>
        <translation>oui&#xa0;: la plaquette est épuisée</translation>
    </message>
    <message>
        <source>Bucket</source>
        <translation>Seau</translation>
    </message>
    <message>
        <source>not emptied</source>
        <translation>non vidé</translation>
    </message>
    <message>
        <source>Sprayed</source>
        <translation>Traité</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Another bag of this trap bears this number already.</source>
        <translation>Un autre sachet de ce piège porte déjà ce numéro.</translation>
    </message>
    <message>
        <source>No %1</source>
        <translation>Pas de %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitLureViewModel</name>
    <message>
        <source>This lure expired on %1. Use a fresh one if you have it; the record keeps what was put in.</source>
        <translation>Cette phéromone est périmée depuis le %1. Prenez-en une neuve si vous en avez&#xa0;; l’enregistrement garde ce qui a été posé.</translation>
    </message>
    <message>
        <source>The next count begins from nothing.</source>
        <translation>Le prochain relevé part de zéro.</translation>
    </message>
    <message>
        <source>Not sprayed</source>
        <translation>Non traité</translation>
    </message>
    <message>
        <source>Tap if it was, or if you know that it was not</source>
        <translation>Touchez s’il l’a été, ou si vous savez que non</translation>
    </message>
    <message>
        <source>Sprayed</source>
        <translation>Traité</translation>
    </message>
    <message>
        <source>Sprayed with %1</source>
        <translation>Traité avec %1</translation>
    </message>
    <message>
        <source>What was counted stays in the trap: the next count holds it as well, and it is not added twice.</source>
        <translation>Ce qui a été compté reste dans le piège&#xa0;: le prochain relevé le comprend aussi, et il n’est pas additionné deux fois.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitTrapViewModel</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation>Toujours %1</translation>
    </message>
    <message>
        <source>entrance %1</source>
        <translation>entrée %1</translation>
    </message>
    <message>
        <source>canopy %1</source>
        <translation>couvert %1</translation>
    </message>
    <message>
        <source>canopy was %1</source>
        <translation>couvert avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>No height is known yet</source>
        <translation>Aucune hauteur connue encore</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>It has not grown in %1.</source>
        <translation>Le couvert n’a pas grandi en %1.</translation>
    </message>
    <message>
        <source>It stands %1 lower than %2 before.</source>
        <translation>Le couvert est plus bas de %1 qu’il y a %2.</translation>
    </message>
    <message>
        <source>It grew %1 in %2.</source>
        <translation>Le couvert a grandi de %1 en %2.</translation>
    </message>
    <message>
        <source>The crop stands at the entrance: raise it now.</source>
        <translation>La culture atteint l’entrée&#xa0;: rehaussez le piège maintenant.</translation>
    </message>
    <message>
        <source>The crop stands at the entrance; this trap keeps its height.</source>
        <translation>La culture atteint l’entrée&#xa0;; ce piège garde sa hauteur.</translation>
    </message>
    <message>
        <source>At that pace it reaches the entrance about %1 (estimate): raise it now.</source>
        <translation>À ce rythme, la culture atteint l’entrée vers le %1 (estimation)&#xa0;: rehaussez le piège maintenant.</translation>
    </message>
    <message>
        <source>At that pace it reaches the entrance about %1 (estimate).</source>
        <translation>À ce rythme, la culture atteint l’entrée vers le %1 (estimation).</translation>
    </message>
    <message>
        <source>Little air is left over the crop: raise it now.</source>
        <translation>Il reste peu d’air au-dessus de la culture&#xa0;: rehaussez le piège maintenant.</translation>
    </message>
    <message>
        <source>Raised by %1, and logged so.</source>
        <translation>Piège rehaussé de %1, et noté ainsi.</translation>
    </message>
    <message>
        <source>I raised it to %1</source>
        <translation>Je l’ai rehaussé à %1</translation>
    </message>
    <message>
        <source>%1, as high as the stake goes</source>
        <translation>%1, aussi haut que va le piquet</translation>
    </message>
    <message>
        <source>The trap may have lost some: the season so far is “at least”.</source>
        <translation>Le piège a pu en perdre&#xa0;: la saison jusqu’ici est «&#xa0;au moins&#xa0;».</translation>
    </message>
    <message>
        <source>The trap may have lost some, so this count is “at least”, and the catch a night leaves these nights out.</source>
        <translation>Le piège a pu en perdre&#xa0;: ce nombre est donc «&#xa0;au moins&#xa0;», et la capture par nuit ne tient pas compte de ces nuits.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::VisitViewModel</name>
    <message>
        <source>Correcting the visit of %1</source>
        <translation>Correction de la visite du %1</translation>
    </message>
    <message>
        <source>Correcting a visit</source>
        <translation>Correction d’une visite</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Rien n’a été changé.</translation>
    </message>
    <message>
        <source>%1: corrected on this phone. What stood there before is in its history.</source>
        <translation>%1&#xa0;: corrigé sur ce téléphone. Ce qui était inscrit avant est dans l’historique.</translation>
    </message>
    <message>
        <source>%1: kept on this phone.</source>
        <translation>%1&#xa0;: enregistré sur ce téléphone.</translation>
    </message>
    <message>
        <source>Write %1 on the bag in pencil, then freeze it.</source>
        <translation>Écrivez %1 au crayon sur le sachet, puis congelez-le.</translation>
    </message>
    <message>
        <source>Last count and take down: %1</source>
        <translation>Dernier relevé et retrait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Next count: %1</source>
        <translation>Prochain relevé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>duskrow::app::WalkStartViewModel</name>
    <message>
        <source>Another field</source>
        <translation>Un autre champ</translation>
    </message>
    <message>
        <source>%1 more fit: type a part of the name.</source>
        <translation>Encore %1 possibles&#xa0;: tapez une partie du nom.</translation>
    </message>
    <message>
        <source>Early: most larvae are still small or not hatched. Look again near the end of flowering.</source>
        <translation>Tôt&#xa0;: la plupart des larves sont encore petites ou pas écloses. Revenez voir vers la fin de la floraison.</translation>
    </message>
    <message>
        <source>Late: the seed is nearly safe, and a label may leave no time before cutting.</source>
        <translation>Tard&#xa0;: la graine est presque hors de danger, et l’étiquette peut ne plus laisser de temps avant la coupe.</translation>
    </message>
    <message>
        <source>This is the time to look.</source>
        <translation>C’est le moment de chercher.</translation>
    </message>
    <message>
        <source>The frame: %1 m², %2 × %2 cm inside.</source>
        <translation>Le cadre&#xa0;: %1 m², %2 × %2 cm à l’intérieur.</translation>
    </message>
    <message>
        <source>A walk in this field was begun on %1 and is not finished.</source>
        <translation>Une tournée de dépistage de ce champ a été commencée le %1 et n’est pas terminée.</translation>
    </message>
</context>
<context>
    <name>duskrow::app::WinterViewModel</name>
    <message>
        <source>Season %1</source>
        <translation>Saison %1</translation>
    </message>
    <message>
        <source>One sheet is in %1.</source>
        <translation>Une fiche est dans %1.</translation>
    </message>
    <message>
        <source>%1 sheets are in %2.</source>
        <translation>%1 fiches sont dans %2.</translation>
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
<context>
    <name>duskrow::app::YearsViewModel</name>
    <message>
        <source>Catch up to %1 of each year</source>
        <translation>Capture jusqu’au %1 de chaque année</translation>
    </message>
    <message>
        <source>Share of the traps in each band</source>
        <translation>Part des pièges dans chaque classe</translation>
    </message>
    <message>
        <source>There is no season of this year yet.</source>
        <translation>Il n’y a pas encore de saison de cette année.</translation>
    </message>
    <message>
        <source>The records are being read.</source>
        <translation>Lecture des enregistrements en cours.</translation>
    </message>
    <message>
        <source>No trap stands yet.</source>
        <translation>Aucun piège en place encore.</translation>
    </message>
    <message>
        <source>%1 is being read.</source>
        <translation>%1&#xa0;: lecture en cours.</translation>
    </message>
</context>
</TS>
