Console.WriteLine("bench"); return 0;
