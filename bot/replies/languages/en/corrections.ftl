## Taking off and putting back

scrapped = Your { $at } run is off. `undo` puts it back.
undone = Your { $at } run is back.
nothing-to-scrap = You have no run to take off.
nothing-to-undo = You have no run to put back.
