## Faults

my-fault = Something went wrong on my side with that line, and whoever runs me has been told. Please send it again later.
dead-event = Event { $event } failed three times ({ $problem }) and was set aside.
dead-message = A message to { $lane } was refused ({ $problem }) and was set aside.
