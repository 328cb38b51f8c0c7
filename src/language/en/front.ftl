# Cautions, and how to use the book.

# Cautions

cautions-title = Please read this first
cautions-description = Cautions: whom to ask, when to get help, when to stop.
cautions-ask = Ask before you start
cautions-ask-1 = Your last eye check should be less than a year ago. Ask: “Is it safe for me to practise using both eyes together?”
cautions-ask-2 = Ask first if you have an eye turn, one much weaker eye, double vision, shaky eyes or a new prism. Ask first after eye surgery or a head injury.
cautions-ask-3 = Ask first with thyroid, nerve or muscle illness, seizures, migraine set off by patterns, dizziness, or sickness in pregnancy.
cautions-ask-4 = Large studies left out many people with an eye turn or eye surgery. Nobody can say what practice will do for you.
cautions-ask-5 = Under 18: only with an adult beside you, five minutes at most, at a level set by a professional.
cautions-stop = Stop rule
cautions-help = Get medical help now
cautions-help-words = New or sudden double vision, even if it passes. A drooping lid, unequal pupils, loss of sight. A new or very bad headache. Weakness in face or arm, trouble speaking, pain in jaw or scalp. Any of these after a blow to the head. Call your emergency number; this is never part of practice.
cautions-safe = Keep safe
cautions-safe-1 = Do not practise while or before you drive, cycle, climb, swim, cook or use machines. Wait at least 30 minutes, until sight is single and clear.
cautions-safe-2 = Not after alcohol or calming medicine, not with a fever, not when very tired.
cautions-safe-3 = At most 10 to 15 minutes a day. Look far away for half a minute after each page.
cautions-safe-4 = If the colours or patterns trouble you, take the glasses off and stop. That is fine.
cautions-about = About this book
cautions-about-words = This book is for information only and comes without any guarantee. It is a set of practice pages, not a test and not a treatment. What your licensed eye-care professional and the rules where you live say comes first.
cautions-base = All pictures ride on a base ({ $base }), set by { $by } for one reader. Do not use, lend or copy it for anyone else. It holds at { $distance } alone. Change nothing yourself.

# How to use the book

how-title = How to use these pages
how-description = What is needed, how a page works, when to move on and when to step back.
how-needs = What you need
how-needs-glasses = Glasses: { $glasses }. Wear your own glasses under them.
how-needs-paper = A page printed at 100 %, flat and level.
how-needs-screen = A screen that shows the page at 100 %, flat and level.
how-needs-ruler = A ruler or string of { $distance }.
how-needs-light = Even light without glare, and a pencil for the log.
how-each-day = Each day
how-day-check = Check glasses, ghost and size (three check pages).
how-day-start = Start with the first exercise. Keep { $distance } from eyes to page.
how-day-practise = Practise two or three minutes, look far away, then go on.
how-day-end = End each time by looking into the distance.
how-works = How a page works
how-works-pictures = Each eye gets its own picture. Your brain joins the two. Shapes that are moved apart seem to stand toward you or away from you. A frame rides with a shape and helps your eyes to stay on it.
how-picture = Left eye: a ring with a flat bar in it. Right eye: the same ring with a wedge in it. Both eyes together: one ring with bar and wedge.
how-works-marks = The flat bar is only for your left eye, the wedge only for your right. If you see both, both eyes take part.
how-works-grade = The grade at the head of a page, 1 to 10, tells how much the page asks. It is no mark for you.
how-move-on = Move on when
how-move-on-1 = It was easy on three different days and both marks were there.
how-move-on-2 = Comfort stayed good: 0 to 2 of 10, where 10 is bad.
how-step-back = Step back when
how-step-back-1 = A mark goes missing, or all is double.
how-step-back-2 = Comfort reaches 4 of 10. Rest, then take an easier page.
