package dev.dogleg.cli.csv;

import java.nio.file.Path;

/** A good book folder with every column in use; nothing in it is at fault. */
final class GoodBook {
  static final String CLIENTS =
      """
      client,client_id,phone,tell,address,pin,parking,entry,extra_minutes,notes,shoe size
      Okafor,,(212) 555-0100,text,12 Mill Lane,,drive,gate 4711,5,likes a call,43
      Lindqvist,lq,+44 7700 900123,call,"3 Station Road, upper flat",,street,bell,,,
      O'Hara,,212-555-0101,neighbour,,"10.5,-30.25",,,,,
      """;

  static final String PETS =
      """
      pet,pet_id,client,client_id,species,breed,size,coat,behaviour,tags,service,minutes,price,every_weeks,born,last_groomed,rabies_until
      Biscuit,,Okafor,,dog,Miniature Poodle,14 lb,curly,nervous,senior; heart,full + teeth,80,65.00,6,2014,2027-01-19,2028-01-01
      Gravy,,Okafor,,dog,Beagle,,,,,bath,,45,,,never,
      Pepper,pp,Lindqvist,lq,cat,Maine Coon,6 kg,long,easy,,bath,,,,2020-05-01,,
      Max,,O'Hara,,dog,Labrador Retriever,,,difficult,,deshed,,,8 weeks,,,
      """;

  static final String BOOKINGS =
      """
      booking,client,pets,date,when,service,minutes,coat_state,told,status,note
      ,Okafor,Biscuit; Gravy,2027-03-02,9-12,full; nails,,good; matted,,booked,bring treats
      ,Okafor,Biscuit,2027-04-13,,,,,,,
      pp-1,lq,Pepper,2027-03-01..2027-03-04,Tue PM; Wed 9-12,,50,,,waiting,
      ,O'Hara,all,2027-03-03,"after 9, van not 12-14",,,,14:00-15:00,booked,
      ,O'Hara,Max,2027-02-01,,,,,,done,
      """;

  static final String PLACES =
      """
      address,lat,lon,note
      12 Mill Lane,10.123456,-30.654321,the yellow door
      2 Orchard Row,10.2,-30.3,
      """;

  private GoodBook() {}

  static Folder in(Path dir) {
    return Folder.in(dir)
        .with("clients.csv", CLIENTS)
        .with("pets.csv", PETS)
        .with("bookings.csv", BOOKINGS)
        .with("places.csv", PLACES);
  }
}
