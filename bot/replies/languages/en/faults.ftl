## Faults

my-fault = Something went wrong on my side with that line, and whoever runs me has been told. Please send it again later.
unreadable-message = I could not read this message: its key has not reached me. Please send it again.
dead-event = Event { $event } failed three times ({ $problem }) and was set aside.
dead-message = A message to { $lane } was refused ({ $problem }) and was set aside.
