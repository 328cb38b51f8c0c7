# Pages qui posent des questions : ce qu’elles partagent, et ce que chaque sorte a de propre.

choice-check = Vérifiez que la barre et le coin du milieu sont là tous les deux.
choice-rest = Toutes les trois questions, regardez au loin cinq secondes.
choice-score = En tout, { $right } justes sur { $of }, c’est plus que la chance.
choice-no-test = C’est un exercice, pas un test de vos yeux.

odd-goal = Dans chaque groupe, trouvez { $shape-the } qui est à une autre profondeur.
odd-look = Dans le groupe 1, { $shape-a } est plus près ou plus loin que les autres.
odd-write = Notez sa lettre. Un doute ? Devinez.
odd-see = Des { $shape-many } en groupes, { $shape-gender ->
        [f] une
       *[m] un
    } par groupe devant ou derrière le reste. Les écarts inégaux ne disent rien.

side-goal = Dites si chaque { $shape } est plus près ou plus loin que son poteau.
side-look = Regardez le poteau 1 jusqu’à voir ses trois traits alignés.
side-ask = Est-ce que { $shape-the } est plus près que son poteau, ou plus loin ? Notez-le. Un doute ? Devinez.
side-see = Des poteaux droits sur la page. { $shape-gender ->
        [f] Certaines
       *[m] Certains
    } { $shape-many } flottent devant leur poteau, d’autres sont derrière.
side-near = près
side-far = loin

order-goal = Rangez les { $shape-many } de chaque groupe, du plus loin au plus près.
order-ask = Dans le groupe 1, qu’est-ce qui est le plus loin de vous ? Et ensuite ?
order-write = Notez les lettres du plus loin au plus près. Un doute ? Devinez.
order-see-equal = Des { $shape-many } en groupes, { $shape-gender ->
        [f] chacune à sa propre profondeur. Toutes
       *[m] chacun à sa propre profondeur. Tous
    } ont la même taille.
order-see-drawn = Des { $shape-many } en groupes, { $shape-gender ->
        [f] chacune à sa propre profondeur. La taille ne dit rien : une grande
       *[m] chacun à sa propre profondeur. La taille ne dit rien : un grand
    } peut être loin.

match-goal = Trouvez le poteau aussi profond que le poteau seul au-dessus.
match-look = Dans le groupe 1, regardez le poteau seul, puis les cinq en dessous.
match-ask = Lequel des cinq est aussi profond ? Notez son numéro. Un doute ? Devinez.
match-see = Cinq poteaux à cinq profondeurs. Au-dessus, un autre est aussi profond que l’un des cinq.
