Console.WriteLine("loadmark");
return 0;
