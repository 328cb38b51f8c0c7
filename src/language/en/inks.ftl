# The sheets of the inks: swatches with what each eye sees of them, and the spectra behind that.

medium-unsaid = an ideal screen, as nothing is said
medium-screen = screen { $name }
medium-print = print { $solids } under lamp { $lamp }
inks-percent = { $n } %
inks-lead-white = { $left } left, { $right } right; white ground; { $medium }
inks-lead-black = { $left } left, { $right } right; black ground; { $medium }

inks-title = Inks of edition { $id }
inks-description = The inks as swatches, how light each eye sees them, and the contrast and ghost to expect.
inks-marks-picture = A flat bar for the left eye, two rings that cross, one for each eye, and a wedge for the right eye.
inks-ground = Ground
inks-left-mark = Left mark
inks-right-mark = Right mark
inks-overlap = Overlap
inks-words = Words
inks-on-page = On the page
inks-to-left = To the left eye
inks-to-right = To the right eye
inks-swatches-note = Greys and per cents: how light each eye sees a colour, counted from white behind its own filter.
inks-swatches-picture = Swatches of the inks: { $codes }.

inks-expect = What to expect
inks-eye = Eye
inks-contrast = Contrast
inks-ghost = Ghost
inks-crossing = Overlap
inks-brightness = Brightness
inks-eye-left = Left
inks-eye-right = Right
inks-expect-note = Contrast: how far the own mark stands off the ground. Ghost: how far the other eye’s mark does, as a share of the own. Overlap: how far a crossing stands off the own mark. Brightness: the lightest this eye sees, of the page’s white without a filter.

inks-go = Go
inks-fix = Fix
inks-ghost-fine = The ghost stays within 2 %.
inks-ghost-faint = The ghost is over 2 % but within 5 %: readers may notice it.
inks-ghost-strong = The ghost is over 5 %. Tint the ground, or try other glasses, paper or light; then look at the ghost page.
inks-ghost-refused = The ghost is over 15 %. These glasses do not part the two marks on this medium.
inks-imbalance = The two eyes’ brightness differs { $n } to 1.
inks-imbalance-more = The two eyes’ brightness differs { $n } to 1, more than the 2 to 1 to aim for.
inks-text-contrast = Words stand off the ground { $n } to 1.

inks-traded = What was traded
inks-traded-nothing = Nothing: these are the full inks of the glasses.
inks-role-left = the left ink
inks-role-right = the right ink
inks-role-overlap = the overlap ink
inks-role-ground = the ground ink
inks-traded-tint = the ground is tinted to { $ground }: it has { $left } of white to the left eye and { $right } to the right; the ghost goes from { $before } to { $after }
inks-traded-ink = { $ink } is not the full { $full }: its signal is { $signal } instead of { $whole }
inks-traded-pinned = { $ink } is the author's; solved it would be { $solved }, with a ghost of { $ghost } instead of { $pinned }
inks-traded-ghost = the ghost is { $left } to the left eye and { $right } to the right, limit { $limit }
inks-traded-ghost-tinted = the ghost is { $left } to the left eye and { $right } to the right, limit { $limit }; a tinted ground would bring it to { $tinted }

# Spectra.

spectra-title = Light, filters and what passes
spectra-description = Four plots over the wavelength: the light, the filters, and what passes to each eye.
spectra-red = red
spectra-green = green
spectra-blue = blue
spectra-ground = ground
spectra-left-mark = left mark
spectra-right-mark = right mark
spectra-page-sends = What the page sends
spectra-screen-sends = What the screen sends
spectra-peak = light, share of its peak
spectra-filters = What the filters let through
spectra-share = share that passes
spectra-left-filter = left: { $filter }
spectra-right-filter = right: { $filter }
spectra-passes-left = What passes to the left eye
spectra-passes-right = What passes to the right eye
spectra-scale = light, same scale
spectra-light = { $light } { $share } %
spectra-note = Per cents: how bright that light is to the eye, of the page’s white without a filter.
spectra-note-leak = Per cents: how bright that light is to the eye, of the page’s white without a filter. An eye that is known by its leak has the curve of an ideal filter; its per cents count the leak.
spectra-wavelength = wavelength, nm
spectra-picture = { $title }, over the wavelength from 380 to 780 nm. Curves: { $curves }.
